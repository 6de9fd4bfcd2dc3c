package dev.kettlemark.checks;

import dev.kettlemark.library.Entry;
import dev.kettlemark.model.Acceptance;
import dev.kettlemark.model.Facts;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.Section;
import dev.kettlemark.syntax.SectionWord;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The acceptances of a section: those that are written, and the one that a finding asks for. */
public final class Acceptances {

  private static final String LINE = "  %-10s%s";

  private Acceptances() {}

  /** The acceptances written in a section, in order; one in a stage holds for its lines only. */
  public static List<Acceptance> in(Entry entry) {
    List<Span> stages = stages(entry.section());
    return entry.declaration().flatMap(Facts::of).stream()
        .flatMap(facts -> facts.all(Acceptance.WORD))
        .flatMap(fact -> Acceptance.of(fact, around(stages, fact.span())).stream())
        .toList();
  }

  /**
   * The fix that accepts a finding: an acceptance in its stage, or else among the facts, whose reason is
   * still to be written.
   *
   * @return empty for a finding that cannot be accepted, and in a section without acceptances
   */
  public static Optional<Fix> offer(Entry entry, Finding finding) {
    if (!finding.rule().acceptable() || finding.isAccepted() || !takesAcceptances(entry)) {
      return Optional.empty();
    }
    String rest = finding.rule().id() + " \"" + Acceptance.UNFILLED + "\"";
    TextEdit edit = around(stages(entry.section()), finding.span())
        .map(stage -> behindLast(entry.section(), stage, LINE.formatted(Acceptance.WORD, rest)))
        .orElseGet(
            () -> new Columns(entry.section()).addFact(Optional.empty(), Acceptance.WORD, rest));
    return Optional.of(
        new Fix("Accept `" + finding.rule().id() + "` with a reason", List.of(edit)));
  }

  private static boolean takesAcceptances(Entry entry) {
    return entry.declaration().flatMap(Facts::of).isPresent();
  }

  /** The lines of each stage, from its heading to the next one. */
  private static List<Span> stages(Section section) {
    List<Integer> starts = new ArrayList<>();
    for (Line line : section.lines()) {
      if (line instanceof Line.SectionLine heading && heading.keyword() == SectionWord.STAGE) {
        starts.add(heading.span().start());
      }
    }
    List<Span> stages = new ArrayList<>();
    for (int i = 0; i < starts.size(); i++) {
      int end = i + 1 < starts.size() ? starts.get(i + 1) - 1 : section.text().length();
      stages.add(new Span(starts.get(i), end));
    }
    return stages;
  }

  private static Optional<Span> around(List<Span> stages, Span place) {
    return stages.stream()
        .filter(stage -> stage.start() <= place.start() && place.start() <= stage.end())
        .findFirst();
  }

  private static TextEdit behindLast(Section section, Span stage, String content) {
    Span last = section.lines().stream()
        .filter(line -> stage.contains(line.span()) && !(line instanceof Line.EmptyLine))
        .map(Line::span)
        .reduce((one, later) -> later)
        .orElse(stage);
    return WrittenLines.of(section.text()).below(last, content);
  }
}
