package dev.kettlemark.cli;

import dev.kettlemark.checks.Severity;
import dev.kettlemark.model.Acceptance;
import java.util.ArrayList;
import java.util.List;

/**
 * What a check found.
 *
 * @param findings in order of file and place
 * @param accepted what is accepted with a reason, in order of file and place
 * @param files how many were checked
 * @param formulas how many formulas and variants they hold
 * @param problems what could not be read, in plain words
 */
record CheckResult(
    List<PlacedFinding> findings,
    List<Accepted> accepted,
    int files,
    int formulas,
    List<String> problems) {

  /** A finding and the line that accepts it. */
  record Accepted(PlacedFinding placed, Acceptance acceptance) {}

  CheckResult {
    findings = List.copyOf(findings);
    accepted = List.copyOf(accepted);
    problems = List.copyOf(problems);
  }

  /**
   * Checks what was asked for of each library.
   *
   * @param least the least grave findings that count
   * @param cores share the documents among them
   */
  static CheckResult of(List<LibraryFolder> folders, Severity least, Cores cores) {
    List<CheckedDocument> checked = new ArrayList<>();
    List<String> problems = new ArrayList<>();
    for (LibraryFolder folder : folders) {
      problems.addAll(folder.problems());
      checked.addAll(CheckedDocument.all(folder, least, cores));
    }
    return new CheckResult(
        checked.stream().flatMap(document -> document.findings().stream()).toList(),
        checked.stream().flatMap(document -> document.accepted().stream()).toList(),
        checked.size(),
        checked.stream().mapToInt(CheckedDocument::formulas).sum(),
        problems);
  }

  long count(Severity severity) {
    return findings.stream()
        .filter(placed -> placed.finding().severity() == severity)
        .count();
  }
}
