package dev.kettlemark.cli;

import dev.kettlemark.checks.Finding;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.checks.Severity;
import dev.kettlemark.checks.Verdict;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.model.Acceptance;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Variant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

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
   */
  static CheckResult of(List<LibraryFolder> folders, Severity least) {
    List<PlacedFinding> findings = new ArrayList<>();
    List<Accepted> accepted = new ArrayList<>();
    List<String> problems = new ArrayList<>();
    int files = 0;
    int formulas = 0;
    for (LibraryFolder folder : folders) {
      problems.addAll(folder.problems());
      for (Document document : folder.documents()) {
        files++;
        for (Entry entry : document.entries()) {
          formulas += isFormula(entry) ? 1 : 0;
          Function<Finding, PlacedFinding> placed =
              finding -> new PlacedFinding(folder, document, entry, finding);
          Verdict verdict = Rules.judged(folder.snapshot(), entry);
          verdict.shown().stream()
              .filter(finding -> finding.severity().compareTo(least) <= 0)
              .map(placed)
              .forEach(findings::add);
          verdict.accepted().stream()
              .filter(known -> known.finding().severity().compareTo(least) <= 0)
              .map(known -> new Accepted(placed.apply(known.finding()), known.acceptance()))
              .forEach(accepted::add);
        }
      }
    }
    return new CheckResult(findings, accepted, files, formulas, problems);
  }

  long count(Severity severity) {
    return findings.stream()
        .filter(placed -> placed.finding().severity() == severity)
        .count();
  }

  private static boolean isFormula(Entry entry) {
    return entry
        .declaration()
        .filter(d -> d instanceof Formula || d instanceof Variant)
        .isPresent();
  }
}
