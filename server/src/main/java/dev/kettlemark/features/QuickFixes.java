package dev.kettlemark.features;

import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.checks.Acceptances;
import dev.kettlemark.checks.Finding;
import dev.kettlemark.checks.Fix;
import dev.kettlemark.checks.RuleInfo;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** What mends the findings of a stretch of text. */
public final class QuickFixes {

  /** A search takes its time; a selection of many lines does not wait for more than so many. */
  private static final int MOST_ASKED = 3;

  private QuickFixes() {}

  /**
   * A way to mend a finding.
   *
   * @param title what it does
   * @param finding what it mends
   * @param span where the finding stands, absolute
   * @param preferred whether it is the first and best way
   * @param edits by URI, in absolute offsets
   */
  public record Action(
      String title,
      Finding finding,
      Span span,
      boolean preferred,
      Map<String, List<TextEdit>> edits) {

    public Action {
      edits = Map.copyOf(edits);
    }
  }

  /** The fixes of every finding that the range meets, in order of place. */
  public static List<Action> at(Snapshot snapshot, Document document, Span range) {
    return document.entries().stream()
        .filter(entry -> entry.placed().span().meets(range))
        .flatMap(entry -> Rules.of(snapshot, entry).stream()
            .filter(finding -> entry.place(finding.span()).span().meets(range))
            .flatMap(finding -> actions(entry, finding)))
        .toList();
  }

  /**
   * What mends a finding of the range once it has been searched for; only what takes the finding away.
   *
   * <p>Each answer is tried on the whole text, so this is asked for the line under a cursor.
   */
  public static List<Action> answers(Snapshot snapshot, Document document, Span range) {
    return document.entries().stream()
        .filter(entry -> entry.placed().span().meets(range))
        .flatMap(entry -> Rules.of(snapshot, entry).stream()
            .filter(finding -> FindingQuestions.isAsked(finding.rule().id()))
            .filter(finding -> entry.place(finding.span()).span().meets(range))
            .limit(MOST_ASKED)
            .flatMap(finding -> answers(snapshot, document, entry, finding)))
        .toList();
  }

  private static Stream<Action> answers(
      Snapshot snapshot, Document document, Entry entry, Finding finding) {
    return Formulas.computed(snapshot, entry).stream()
        .flatMap(formula ->
            FindingQuestions.answers(snapshot, entry, formula, finding.rule().id(), finding.span())
                .stream())
        .filter(proposal -> finding.fixes().stream()
            .noneMatch(fix -> absolute(entry, fix).equals(proposal.edits())))
        .filter(proposal -> mends(snapshot, document, finding, proposal.edits()))
        .map(proposal -> new Action(
            proposal.title(),
            finding,
            entry.place(finding.span()).span(),
            false,
            Map.of(entry.uri(), proposal.edits())));
  }

  private static boolean mends(
      Snapshot snapshot, Document document, Finding finding, List<TextEdit> edits) {
    Document mended = document.with(edits);
    Snapshot after = snapshot.tried(snapshot.library().with(mended));
    return count(after, mended, finding.rule()) < count(snapshot, document, finding.rule());
  }

  private static long count(Snapshot snapshot, Document document, RuleInfo rule) {
    return document.entries().stream()
        .flatMap(entry -> Rules.of(snapshot, entry).stream())
        .filter(finding -> finding.rule().id().equals(rule.id()))
        .count();
  }

  /** The ways to accept what is found in the range, one for each rule; they come behind all else. */
  public static List<Action> acceptances(Snapshot snapshot, Document document, Span range) {
    Set<String> offered = new HashSet<>();
    return document.entries().stream()
        .filter(entry -> entry.placed().span().meets(range))
        .flatMap(entry -> Rules.of(snapshot, entry).stream()
            .filter(finding -> entry.place(finding.span()).span().meets(range))
            .flatMap(finding -> Acceptances.offer(entry, finding).stream()
                .filter(fix -> offered.add(finding.rule().id()))
                .map(fix -> action(entry, finding, fix, false))))
        .toList();
  }

  private static Stream<Action> actions(Entry entry, Finding finding) {
    return finding.fixes().stream()
        .map(fix -> action(entry, finding, fix, fix.equals(finding.fixes().get(0))));
  }

  private static Action action(Entry entry, Finding finding, Fix fix, boolean preferred) {
    return new Action(
        fix.title(),
        finding,
        entry.place(finding.span()).span(),
        preferred,
        Map.of(entry.uri(), absolute(entry, fix)));
  }

  private static List<TextEdit> absolute(Entry entry, Fix fix) {
    return fix.edits().stream()
        .map(edit -> edit.shiftedBy(entry.placed().offset()))
        .toList();
  }
}
