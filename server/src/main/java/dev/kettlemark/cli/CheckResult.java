package dev.kettlemark.cli;

import dev.kettlemark.checks.Rules;
import dev.kettlemark.checks.Severity;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Variant;
import java.util.ArrayList;
import java.util.List;

/**
 * What a check found.
 *
 * @param findings in order of file and place
 * @param files how many were checked
 * @param formulas how many formulas and variants they hold
 * @param problems what could not be read, in plain words
 */
record CheckResult(List<PlacedFinding> findings, int files, int formulas, List<String> problems) {

  CheckResult {
    findings = List.copyOf(findings);
    problems = List.copyOf(problems);
  }

  /**
   * Checks what was asked for of each library.
   *
   * @param least the least grave findings that count
   */
  static CheckResult of(List<LibraryFolder> folders, Severity least) {
    List<PlacedFinding> findings = new ArrayList<>();
    List<String> problems = new ArrayList<>();
    int files = 0;
    int formulas = 0;
    for (LibraryFolder folder : folders) {
      problems.addAll(folder.problems());
      for (Document document : folder.documents()) {
        files++;
        for (Entry entry : document.entries()) {
          formulas += isFormula(entry) ? 1 : 0;
          Rules.of(folder.snapshot(), entry).stream()
              .filter(finding -> finding.severity().compareTo(least) <= 0)
              .map(finding -> new PlacedFinding(folder, document, entry, finding))
              .forEach(findings::add);
        }
      }
    }
    return new CheckResult(findings, files, formulas, problems);
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
