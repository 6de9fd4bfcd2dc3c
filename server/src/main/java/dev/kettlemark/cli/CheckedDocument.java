package dev.kettlemark.cli;

import dev.kettlemark.checks.Finding;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.checks.Severity;
import dev.kettlemark.checks.Verdict;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Variant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * What a check found in one document.
 *
 * @param findings in order of place
 * @param accepted what is accepted with a reason, in order of place
 * @param formulas how many formulas and variants it holds
 */
record CheckedDocument(
    List<PlacedFinding> findings, List<CheckResult.Accepted> accepted, int formulas) {

  /**
   * So many documents at a time share what is computed of them and of what they go back to; then it is
   * let go, or a large library would be held with all its stages, masses and labels until the end.
   */
  private static final int AT_A_TIME = 500;

  CheckedDocument {
    findings = List.copyOf(findings);
    accepted = List.copyOf(accepted);
  }

  /**
   * Checks the documents of a library that were asked for, and keeps their order.
   *
   * @param least the least grave findings that count
   */
  static List<CheckedDocument> all(LibraryFolder folder, Severity least, Cores cores) {
    List<Document> documents = folder.documents();
    List<CheckedDocument> checked = new ArrayList<>(documents.size());
    for (int start = 0; start < documents.size(); start += AT_A_TIME) {
      int end = Math.min(documents.size(), start + AT_A_TIME);
      Snapshot meanwhile = folder.snapshot().tried(folder.snapshot().library());
      List<Document> some = documents.subList(start, end);
      checked.addAll(cores.map(some, document -> of(folder, meanwhile, document, least)));
      some.forEach(meanwhile::letGo);
    }
    return List.copyOf(checked);
  }

  private static CheckedDocument of(
      LibraryFolder folder, Snapshot snapshot, Document document, Severity least) {
    List<PlacedFinding> findings = new ArrayList<>();
    List<CheckResult.Accepted> accepted = new ArrayList<>();
    int formulas = 0;
    for (Entry entry : document.entries()) {
      formulas += isFormula(entry) ? 1 : 0;
      Function<Finding, PlacedFinding> placed =
          finding -> new PlacedFinding(folder, document, entry, finding);
      Verdict verdict = Rules.judged(snapshot, entry);
      verdict.shown().stream()
          .filter(finding -> finding.severity().compareTo(least) <= 0)
          .map(placed)
          .forEach(findings::add);
      verdict.accepted().stream()
          .filter(known -> known.finding().severity().compareTo(least) <= 0)
          .map(known -> new CheckResult.Accepted(placed.apply(known.finding()), known.acceptance()))
          .forEach(accepted::add);
    }
    return new CheckedDocument(findings, accepted, formulas);
  }

  private static boolean isFormula(Entry entry) {
    return entry
        .declaration()
        .filter(d -> d instanceof Formula || d instanceof Variant)
        .isPresent();
  }
}
