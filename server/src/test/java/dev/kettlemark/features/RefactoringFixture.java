package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.checks.Severity;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Texts with a selection from {@code <[>} to {@code <]>}, or a cursor {@code <|>}, and what is offered there. */
record RefactoringFixture(FeatureFixture fixture, Span range) {

  private static final String START = "<[>";
  private static final String END = "<]>";

  static RefactoringFixture of(String marked) {
    if (!marked.contains(START)) {
      FeatureFixture fixture = FeatureFixture.of(marked);
      return new RefactoringFixture(fixture, Span.at(fixture.offset()));
    }
    int start = marked.indexOf(START);
    int end = marked.indexOf(END) - START.length();
    FeatureFixture fixture = FeatureFixture.of(marked.replace(START, "").replace(END, ""));
    return new RefactoringFixture(fixture, new Span(start, end));
  }

  /** A text with the cursor on the first line that holds something. */
  static RefactoringFixture at(String text, String something) {
    FeatureFixture fixture = FeatureFixture.of(text);
    return new RefactoringFixture(fixture, Span.at(text.indexOf(something)));
  }

  RefactoringSite site() {
    return RefactoringSite.at(fixture.snapshot(), fixture.document(), range).orElseThrow();
  }

  List<Refactoring> all() {
    return Refactorings.at(fixture.snapshot(), fixture.document(), range, true);
  }

  static List<String> titles(List<Refactoring> found) {
    return found.stream().map(Refactoring::title).toList();
  }

  /** The text after the one whose title starts so. */
  String applied(List<Refactoring> found, String start) {
    Refactoring chosen = found.stream()
        .filter(one -> one.title().startsWith(start))
        .findFirst()
        .orElseThrow(() -> new AssertionError(start + " is not among " + titles(found)));
    return applied(fixture.document(), chosen);
  }

  static String applied(Document document, Refactoring chosen) {
    return TextEdit.applyAll(
        document.text().source().text(), chosen.edits().getOrDefault(document.uri(), List.of()));
  }

  static ComputedFormula formula(String text, String name) {
    return formula(FeatureFixture.of(text).snapshot(), name);
  }

  static ComputedFormula formula(Snapshot snapshot, String name) {
    return Formulas.computed(name).ask(snapshot).orElseThrow();
  }

  /** How often each rule finds something as grave as this in a document. */
  static Map<String, Integer> found(Snapshot snapshot, Document document, Set<Severity> grave) {
    Map<String, Integer> found = new TreeMap<>();
    document
        .entries()
        .forEach(entry -> Rules.of(snapshot, entry).stream()
            .filter(finding -> grave.contains(finding.severity()))
            .forEach(finding -> found.merge(finding.rule().id(), 1, Integer::sum)));
    return found;
  }

  /** No error and no warning in a text that stands alone. */
  static void assertClean(String text) {
    FeatureFixture fixture = FeatureFixture.of(text);
    assertEquals(
        Map.of(),
        found(fixture.snapshot(), fixture.document(), EnumSet.of(Severity.ERROR, Severity.WARNING)),
        text);
  }
}
