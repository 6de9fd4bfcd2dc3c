package dev.kettlemark.cli;

import dev.kettlemark.checks.Finding;
import java.io.PrintWriter;

/** Findings for an editor that runs the checker as it runs a compiler: one line each. */
final class FindingsLines {

  private FindingsLines() {}

  static void write(CheckResult result, PrintWriter out) {
    result.findings().forEach(placed -> out.println(line(placed)));
  }

  private static String line(PlacedFinding placed) {
    Finding finding = placed.finding();
    String address =
        PlacedFinding.address(placed.shownPath(), placed.source(), placed.span().start());
    return address
        + ": "
        + FindingsText.word(finding.severity())
        + ": "
        + Visible.of(finding.message())
        + " ["
        + finding.rule().id()
        + "]";
  }
}
