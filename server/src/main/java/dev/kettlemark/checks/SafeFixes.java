package dev.kettlemark.checks;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Applies to a document all fixes that leave no doubt.
 *
 * <p>Only what a fix itself calls safe is applied, and nothing that is accepted.
 *
 * @param document the document with the fixes
 * @param applied the fixes, round by round, in order of place
 */
public record SafeFixes(Document document, List<Applied> applied) {

  /** One mended mistake can bring another to light; more rounds than this are a fault of a rule. */
  private static final int MOST_ROUNDS = 8;

  /**
   * A fix that was applied.
   *
   * @param round from 0; its spans are those of the text that the round before left
   * @param finding what it mends
   * @param span where the finding stands
   * @param edits in the document's offsets
   */
  public record Applied(int round, Finding finding, Fix fix, Span span, List<TextEdit> edits) {

    public Applied {
      edits = List.copyOf(edits);
    }
  }

  public SafeFixes {
    applied = List.copyOf(applied);
  }

  /** Mends a document of a library. */
  public static SafeFixes of(Snapshot snapshot, Document document) {
    Snapshot now = snapshot.tried(snapshot.library());
    Document mended = document;
    List<Applied> applied = new ArrayList<>();
    for (int round = 0; round < MOST_ROUNDS; round++) {
      List<Applied> found = round(now, mended, round);
      if (found.isEmpty()) {
        break;
      }
      applied.addAll(found);
      mended =
          Document.of(mended.uri(), mended.text().source().with(editsOf(found)).text());
      now = now.with(now.library().with(mended));
    }
    return new SafeFixes(mended, applied);
  }

  /** The whole change of a text: the edits themselves, or where they build on each other one for all. */
  public List<TextEdit> edits(Document before) {
    if (applied.stream().allMatch(fix -> fix.round() == 0)) {
      return editsOf(applied);
    }
    String old = before.text().source().text();
    String fresh = document.text().source().text();
    int start = 0;
    while (start < Math.min(old.length(), fresh.length())
        && old.charAt(start) == fresh.charAt(start)) {
      start++;
    }
    int behind = 0;
    while (behind < Math.min(old.length(), fresh.length()) - start
        && old.charAt(old.length() - 1 - behind) == fresh.charAt(fresh.length() - 1 - behind)) {
      behind++;
    }
    return List.of(new TextEdit(
        new Span(start, old.length() - behind), fresh.substring(start, fresh.length() - behind)));
  }

  private static List<TextEdit> editsOf(List<Applied> fixes) {
    return fixes.stream().flatMap(fix -> fix.edits().stream()).toList();
  }

  /** The first safe fix of each finding, as long as they stay clear of each other. */
  private static List<Applied> round(Snapshot snapshot, Document document, int round) {
    List<Applied> found = new ArrayList<>();
    int free = 0;
    for (Entry entry : document.entries()) {
      for (Finding finding : Rules.of(snapshot, entry)) {
        Optional<Applied> fix = fix(entry, finding, round);
        if (fix.isPresent() && start(fix.get()) >= free) {
          found.add(fix.get());
          free = end(fix.get()) + 1;
        }
      }
    }
    return found;
  }

  private static Optional<Applied> fix(Entry entry, Finding finding, int round) {
    return finding.fixes().stream()
        .filter(fix -> fix.safe() && !fix.edits().isEmpty() && !finding.isAccepted())
        .findFirst()
        .map(fix -> new Applied(
            round,
            finding,
            fix,
            entry.place(finding.span()).span(),
            fix.edits().stream()
                .map(edit -> edit.shiftedBy(entry.placed().offset()))
                .toList()));
  }

  private static int start(Applied fix) {
    return fix.edits().stream().mapToInt(edit -> edit.span().start()).min().orElse(0);
  }

  private static int end(Applied fix) {
    return fix.edits().stream().mapToInt(edit -> edit.span().end()).max().orElse(0);
  }
}
