package dev.kettlemark.features;

import dev.kettlemark.checks.Finding;
import dev.kettlemark.checks.Fix;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What mends the findings of a stretch of text. */
public final class QuickFixes {

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

  private static Stream<Action> actions(Entry entry, Finding finding) {
    return finding.fixes().stream()
        .map(fix -> new Action(
            fix.title(),
            finding,
            entry.place(finding.span()).span(),
            fix.equals(finding.fixes().get(0)),
            Map.of(entry.uri(), absolute(entry, fix))));
  }

  private static List<TextEdit> absolute(Entry entry, Fix fix) {
    return fix.edits().stream()
        .map(edit -> edit.shiftedBy(entry.placed().offset()))
        .toList();
  }
}
