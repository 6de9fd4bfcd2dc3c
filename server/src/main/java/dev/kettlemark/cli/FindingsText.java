package dev.kettlemark.cli;

import dev.kettlemark.checks.Finding;
import dev.kettlemark.checks.Fix;
import dev.kettlemark.checks.Severity;
import dev.kettlemark.text.Cells;
import java.io.PrintWriter;

/** Findings for a person: where, what, the line itself, why, and how to mend it. */
final class FindingsText {

  /** {@code "  why   "} and its like. */
  private static final int LABEL_WIDTH = 8;

  private final PrintWriter out;
  private final Paint paint;
  private final int width;

  FindingsText(PrintWriter out, Paint paint, int width) {
    this.out = out;
    this.paint = paint;
    this.width = width;
  }

  void write(CheckResult result) {
    result.findings().forEach(this::write);
    out.println(summary(result));
  }

  /** {@code 12 files, 13 formulas: 0 errors, 2 warnings, 3 notes, 1 accepted}. */
  static String summary(CheckResult result) {
    long hints = result.count(Severity.HINT);
    int accepted = result.accepted().size();
    return counted(result.files(), "file")
        + ", "
        + counted(result.formulas(), "formula")
        + ": "
        + counted(result.count(Severity.ERROR), "error")
        + ", "
        + counted(result.count(Severity.WARNING), "warning")
        + ", "
        + counted(result.count(Severity.INFORMATION), "note")
        + (hints == 0 ? "" : ", " + counted(hints, "hint"))
        + (accepted == 0 ? "" : ", " + accepted + " accepted");
  }

  private void write(PlacedFinding placed) {
    Finding finding = placed.finding();
    String address =
        PlacedFinding.address(placed.shownPath(), placed.source(), placed.span().start());
    out.println(paint.bold(address)
        + "  "
        + paint.severity(finding.severity(), word(finding.severity()))
        + "  "
        + paint.faint(finding.rule().id()));
    Cells.wrapped(Visible.of(finding.message()), width - 2)
        .forEach(line -> out.println("  " + line));
    writeExcerpt(placed);
    writeLabelled("why", finding.note());
    for (Fix fix : finding.fixes()) {
      writeLabelled("fix", fix.title());
    }
    for (PlacedFinding.Elsewhere other : placed.elsewhere()) {
      String there = PlacedFinding.address(
          placed.folder().shown(other.uri()), other.source(), other.span().start());
      writeLabelled("see", there + ": " + other.message());
    }
    out.println();
  }

  private void writeExcerpt(PlacedFinding placed) {
    int number =
        PlacedFinding.humanPosition(placed.source(), placed.span().start()).line();
    int gutter = Math.max(LABEL_WIDTH - 3, Integer.toString(number).length() + 2);
    SourceExcerpt excerpt =
        SourceExcerpt.of(placed.source(), placed.span(), width - gutter - " | ".length());
    out.println(paint.faint(Cells.right(Integer.toString(excerpt.number()), gutter) + " | ")
        + excerpt.line());
    out.println(paint.faint(" ".repeat(gutter) + " | ")
        + paint.severity(placed.finding().severity(), excerpt.carets()));
  }

  private void writeLabelled(String label, String text) {
    if (text.isEmpty()) {
      return;
    }
    String head = Cells.left("  " + label, LABEL_WIDTH);
    for (String line : Cells.wrapped(Visible.of(text), width - LABEL_WIDTH)) {
      out.println(paint.faint(head) + line);
      head = " ".repeat(LABEL_WIDTH);
    }
  }

  static String word(Severity severity) {
    return severity == Severity.INFORMATION ? "note" : severity.word();
  }

  private static String counted(long count, String what) {
    return count + " " + what + (count == 1 ? "" : "s");
  }
}
