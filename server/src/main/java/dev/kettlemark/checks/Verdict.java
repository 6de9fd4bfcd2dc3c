package dev.kettlemark.checks;

import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.Acceptance;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Variant;
import dev.kettlemark.model.VariantChange;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What becomes of the findings of a section once its acceptances are looked at, and what only follows from
 * another finding is left out.
 *
 * <p>An acceptance holds if it has a reason and its last day has not passed. It is no business of the
 * rules: they are not run anew when an acceptance changes elsewhere or a day ends.
 *
 * @param shown what is still told, in order of place; safety findings stay even when accepted, and what
 *     only follows from another finding is left out
 * @param accepted what is accepted, in order of place
 * @param handedDown the acceptances that hold for what variants take over from here
 */
public record Verdict(List<Finding> shown, List<Accepted> accepted, List<Acceptance> handedDown) {

  /** A finding as the rule made it, and the line that accepts it. */
  public record Accepted(Finding finding, Acceptance acceptance) {}

  public Verdict {
    shown = List.copyOf(shown);
    accepted = List.copyOf(accepted);
    handedDown = List.copyOf(handedDown);
  }

  /**
   * Judges findings.
   *
   * @param findings all of the section, in order of place
   */
  static Verdict of(Subject subject, List<Finding> findings) {
    List<Acceptance> own = subject.acceptances().stream()
        .filter(acceptance -> holds(subject, acceptance))
        .toList();
    List<Acceptance> inherited = inherited(subject);
    if (own.isEmpty() && inherited.isEmpty()) {
      return new Verdict(Precedence.settled(subject, findings), List.of(), List.of());
    }
    Span heading = subject.section().lines().get(0).span();
    List<Finding> shown = new ArrayList<>();
    List<Accepted> accepted = new ArrayList<>();
    for (Finding finding : findings) {
      Optional<Acceptance> acceptance = covering(own, finding)
          .or(() -> heading.contains(finding.span())
              ? covering(inherited, finding)
              : Optional.<Acceptance>empty());
      acceptance.ifPresent(by -> accepted.add(new Accepted(finding, by)));
      if (acceptance.isEmpty()) {
        shown.add(finding);
      } else if (finding.rule().safety()) {
        shown.add(finding.acceptedFor(acceptance.get().reasonText()));
      }
    }
    return new Verdict(
        Precedence.settled(subject, shown),
        accepted,
        handedDown(own, inherited, findings, accepted));
  }

  private static boolean holds(Subject subject, Acceptance acceptance) {
    return acceptance.hasReason()
        && (acceptance.until().isEmpty() || !acceptance.hasLapsed(subject.today()));
  }

  private static Optional<Acceptance> covering(List<Acceptance> acceptances, Finding finding) {
    return Optional.of(finding)
        .filter(found -> found.rule().acceptable())
        .flatMap(found -> acceptances.stream()
            .filter(acceptance -> acceptance.covers(found.rule().id(), found.span()))
            .findFirst());
  }

  /** What holds for the lines of the parent, but for what the variant withdraws. */
  private static List<Acceptance> inherited(Subject subject) {
    Optional<Variant> variant = Rules.sound(subject);
    return variant.flatMap(Variant::parent).map(Located::value).stream()
        .flatMap(parent -> subject.ask(Lookup.of(Kind.MATERIAL, parent)).stream())
        .flatMap(parent -> subject.ask(Rules.judging(parent)).handedDown().stream())
        .filter(acceptance -> variant.stream()
            .flatMap(v -> v.changes().stream())
            .noneMatch(change -> withdraws(change, acceptance)))
        .toList();
  }

  private static boolean withdraws(VariantChange change, Acceptance acceptance) {
    return change instanceof VariantChange.Withdraw withdraw
        && withdraw.fact().value().equals(Acceptance.WORD)
        && withdraw
            .word()
            .filter(word -> !word.value().equals(acceptance.rule().value()))
            .isEmpty();
  }

  /**
   * What a variant takes over stands in its heading, whatever stage it comes from. So an acceptance in a
   * stage is handed down only where everything that its rule finds here is accepted.
   */
  private static List<Acceptance> handedDown(
      List<Acceptance> own,
      List<Acceptance> inherited,
      List<Finding> findings,
      List<Accepted> accepted) {
    return Stream.concat(own.stream(), inherited.stream())
        .filter(acceptance -> acceptance.scope().isEmpty()
            || countOf(findings.stream(), acceptance)
                == countOf(accepted.stream().map(Accepted::finding), acceptance))
        .map(Acceptance::everywhere)
        .toList();
  }

  private static long countOf(Stream<Finding> findings, Acceptance acceptance) {
    return findings
        .filter(finding -> finding.rule().id().equals(acceptance.rule().value()))
        .count();
  }
}
