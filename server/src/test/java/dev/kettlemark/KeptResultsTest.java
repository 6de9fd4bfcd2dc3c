package dev.kettlemark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.checks.Finding;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.library.Question;
import dev.kettlemark.library.Scope;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.library.Task;
import dev.kettlemark.syntax.Lexeme;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** An edit computes again what it changes and nothing else, and the outcome is that of a fresh start. */
class KeptResultsTest {

  private static final Map<String, String> TEXTS = texts();

  /** Computes a formula as the program does, and notes whose it was. */
  private static final class Noted implements Task<Optional<ComputedFormula>> {

    private final Set<String> computed = new TreeSet<>();

    @Override
    public Optional<ComputedFormula> compute(Entry entry, Scope scope) {
      entry
          .declaration()
          .ifPresent(declaration -> computed.add(declaration.name().value()));
      return Formulas.COMPUTED.compute(entry, scope);
    }

    /** What was computed since the last question. */
    Set<String> news(Snapshot snapshot) {
      computed.clear();
      for (Document document : snapshot.library().documents()) {
        document.entries().forEach(entry -> snapshot.result(this, entry));
      }
      return Set.copyOf(computed);
    }
  }

  @Test
  void computesNothingAgainWithoutAnEdit() {
    Noted noted = new Noted();
    Snapshot snapshot = Snapshot.of(library());
    assertEquals(7, noted.news(snapshot).size());
    assertEquals(Set.of(), noted.news(snapshot));
    assertEquals(Set.of(), noted.news(snapshot.with(snapshot.library())));
  }

  @Test
  void computesOnlyTheFormulaThatWasEdited() {
    assertEquals(Set.of("jelly"), after("jelly.kettle", "12 % glucose", "13 % glucose"));
  }

  @Test
  void computesNothingAgainWhenACommentAboveMovesAllSections() {
    assertEquals(Set.of(), after("pantry.kettle", "# notes", "# many more notes\n\n"));
  }

  @Test
  void computesTheUsersOfAnIngredientAgain() {
    // The bar is made of the syrup, which holds the glucose; the brittle holds none.
    assertEquals(
        Set.of("glucose", "syrup", "bar", "bar-plain", "jelly"),
        after("pantry.kettle", "contains 80 % glucose", "contains 81 % glucose"));
  }

  @Test
  void computesTheUsersOfAFormulaAgain() {
    assertEquals(
        Set.of("syrup", "bar", "bar-plain"), after("syrup.kettle", "cook to 118", "cook to 119"));
  }

  @Test
  void computesAVariantAgainWhenItsParentChanges() {
    assertEquals(Set.of("bar", "bar-plain"), after("bar.kettle", "20 % nuts", "21 % nuts"));
  }

  @Test
  void computesAllFormulasAgainWhenTheHouseMoves() {
    assertEquals(
        Set.of("quay", "syrup", "bar", "bar-plain", "jelly"),
        after("house.kettle", "altitude 8 m", "altitude 1800 m"));
  }

  @Test
  void computesAgainWhatAsksForANameThatAppears() {
    assertEquals(
        Set.of("salt", "jelly"), after("pantry.kettle", "ingredient slat", "ingredient salt"));
  }

  /** Names of sections whose result was computed again by one edit. */
  private static Set<String> after(String uri, String before, String after) {
    Noted noted = new Noted();
    Snapshot snapshot = Snapshot.of(library());
    noted.news(snapshot);
    Document document = snapshot.library().document(uri).orElseThrow();
    int place = document.text().source().text().indexOf(before);
    assertTrue(place >= 0, before);
    Document edited = document.with(new TextEdit(new Span(place, place + before.length()), after));
    return noted.news(snapshot.with(snapshot.library().with(edited)));
  }

  /** Some hundred edits of all documents; each time everything equals a snapshot made from scratch. */
  @Test
  void givesTheSameAsAFreshStartAfterAnyEdits() {
    List<String> pieces = List.of(
        "",
        "1",
        "7",
        " ",
        "\n",
        "x",
        "% ",
        "formula z\n",
        "stage y\n",
        "all of ",
        "q.s. water\n",
        "# ",
        "\"",
        "ingredient salt\n",
        "5 % syrup\n",
        "5 % bar\n",
        "variant w of jelly\n",
        "accept total-off \"wanted\"\n",
        "accept unknown-ingredient \"wanted\" until 2026-11-24\n",
        "threshold total-tolerance 1 %\n",
        "house h\n",
        "=");
    Chance.rounds(4, random -> {
      Snapshot snapshot = Snapshot.of(library());
      for (int edit = 0; edit < 100; edit++) {
        List<Document> documents = List.copyOf(snapshot.library().documents());
        Document document = documents.get(random.nextInt(documents.size()));
        Library next = random.nextInt(25) == 0 && documents.size() > 1
            ? snapshot.library().without(document.uri())
            : snapshot.library().with(edited(document, random, pieces));
        snapshot = snapshot.with(next);
        if (random.nextInt(3) > 0) {
          assertEquals(outcome(fresh(snapshot.library())), outcome(snapshot));
        }
        if (snapshot.library().documents().size() < 3) {
          snapshot = snapshot.with(library());
        }
      }
    });
  }

  /** The same over the sample kitchen, with its house, products, trials and sheets. */
  @Test
  void givesTheSameAsAFreshStartAfterEditsOfTheSamples() {
    Chance.rounds(1, KeptResultsTest::assertSameAfterSixBursts);
  }

  private static void assertSameAfterSixBursts(Random random) {
    Snapshot snapshot = Snapshot.of(Library.of(SampleTexts.libraryWithPantry()), Today.DAY);
    for (int burst = 0; burst < 6; burst++) {
      for (int edit = 0; edit < 5; edit++) {
        List<Document> documents = snapshot.library().ownDocuments();
        Document document = documents.get(random.nextInt(documents.size()));
        snapshot = snapshot.with(snapshot.library().with(reworked(document, random)));
        if (random.nextBoolean()) {
          findings(snapshot);
        }
      }
      List<String> fresh = findings(Snapshot.of(fresh(snapshot.library()).library(), Today.DAY));
      List<String> kept = findings(snapshot);
      assertEquals(List.of(), without(fresh, kept), "forgotten");
      assertEquals(List.of(), without(kept, fresh), "kept too long");
    }
  }

  /** A section taken out, written twice, or put elsewhere, a word taken out or put for another. */
  private static Document reworked(Document document, Random random) {
    String text = document.text().source().text();
    List<Entry> entries = document.entries();
    Entry entry = entries.get(random.nextInt(entries.size()));
    Span section = entry.placed().span();
    List<Lexeme> lexemes = entry.section().lexemes();
    Span word = lexemes.isEmpty()
        ? new Span(0, 0)
        : lexemes.get(random.nextInt(lexemes.size())).span();
    Span place = word.shiftedBy(section.start());
    Entry another = entries.get(random.nextInt(entries.size()));
    String other =
        another.declaration().map(declared -> declared.name().value()).orElse("water");
    return document.with(
        switch (random.nextInt(6)) {
          case 0 -> new TextEdit(section, "");
          case 1 -> new TextEdit(new Span(0, 0), section.of(text));
          case 2 -> new TextEdit(new Span(section.end(), section.end()), section.of(text));
          case 3 -> new TextEdit(place, "");
          case 4 -> new TextEdit(place, other);
          default -> new TextEdit(place, word.of(entry.section().text()) + "x");
        });
  }

  private static List<String> without(List<String> some, List<String> others) {
    List<String> left = new ArrayList<>(some);
    others.forEach(left::remove);
    return left;
  }

  private static List<String> findings(Snapshot snapshot) {
    List<String> found = new ArrayList<>();
    for (Document document : snapshot.library().ownDocuments()) {
      for (Entry entry : document.entries()) {
        Rules.of(snapshot, entry)
            .forEach(finding -> found.add(document.uri() + " " + entry.placed().offset() + " "
                + finding.rule().id() + " " + finding.span() + " " + finding.message()));
      }
    }
    return found;
  }

  /** What does not go back to the edit is not even asked whether it is right still. */
  @Test
  void looksAtNothingThatTheEditDoesNotTouch() {
    AtomicInteger asked = new AtomicInteger();
    Question<Boolean> question = snapshot -> {
      asked.incrementAndGet();
      return Lookup.of(Kind.MATERIAL, "glucose").ask(snapshot).isPresent();
    };
    Task<Boolean> task = (entry, scope) -> scope.ask(question);
    Snapshot snapshot = Snapshot.of(library());
    Entry jelly = snapshot.library().find(Kind.MATERIAL, "jelly").orElseThrow();
    snapshot.result(task, jelly);
    assertEquals(1, asked.get());
    for (int key = 0; key < 100; key++) {
      snapshot = snapshot.with(snapshot.library().with(after(snapshot, "syrup.kettle", "cook to")));
      snapshot.result(task, jelly);
    }
    assertEquals(1, asked.get());
    snapshot = snapshot.with(snapshot.library().with(after(snapshot, "pantry.kettle", "contains")));
    snapshot.result(task, jelly);
    assertEquals(2, asked.get());
  }

  private static Document after(Snapshot snapshot, String uri, String before) {
    Document document = snapshot.library().document(uri).orElseThrow();
    int place = document.text().source().text().indexOf(before) + before.length();
    return document.with(new TextEdit(new Span(place, place), " "));
  }

  private static Document edited(Document document, Random random, List<String> pieces) {
    int length = document.text().source().length();
    int start = random.nextInt(length + 1);
    int end = Math.min(length, start + random.nextInt(random.nextInt(6) == 0 ? 40 : 3));
    String piece = pieces.get(random.nextInt(pieces.size()));
    return document.with(new TextEdit(new Span(start, end), piece));
  }

  private static Snapshot fresh(Library library) {
    return Snapshot.of(Library.of(library.documents().stream()
        .map(document -> document.builtIn()
            ? document
            : Document.of(document.uri(), document.text().source().text()))
        .toList()));
  }

  /** All that can be seen of a snapshot: amounts, yields, materials, steps and findings. */
  private static String outcome(Snapshot snapshot) {
    StringBuilder seen = new StringBuilder();
    for (Document document : snapshot.library().documents()) {
      for (Entry entry : document.entries()) {
        seen.append(document.uri()).append(' ').append(entry.placed().offset()).append('\n');
        Formulas.computed(snapshot, entry).ifPresent(formula -> {
          formula.amounts().lines().forEach(line -> seen.append(line.share()).append('\n'));
          seen.append(formula.process().yieldShare()).append(formula.composition());
          seen.append(formula.process().leftOver())
              .append(formula.resolved().missed())
              .append('\n');
          formula
              .process()
              .stages()
              .forEach(
                  stage -> seen.append(stage.left().mass()).append(stage.left().temperature()));
        });
        for (Finding finding : Rules.of(snapshot, entry)) {
          seen.append(finding.rule().id()).append(finding.span()).append(finding.message());
          seen.append(finding.severity()).append(finding.fixes()).append('\n');
        }
      }
    }
    return seen.toString();
  }

  private static Library library() {
    List<Document> documents = new ArrayList<>();
    TEXTS.forEach((uri, text) -> documents.add(Document.of(uri, text)));
    return Library.of(documents);
  }

  private static Map<String, String> texts() {
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put("house.kettle", """
        house quay
          altitude 8 m
        """);
    texts.put("pantry.kettle", """
        # notes
        ingredient glucose
          contains 80 % glucose, 20 % water
        ingredient slat
          contains 99 % salt, 1 % water
        """);
    texts.put("syrup.kettle", """
        formula syrup
          percent of charge
          batch 500 g
        stage pan
          60 % glucose
          q.s. water
          cook to 118 °C
        """);
    texts.put("bar.kettle", """
        formula bar
          percent of charge
          batch 900 g
        stage bowl
          20 % nuts
          q.s. syrup
          mix
        variant bar-plain of bar
          drop nuts
        """);
    texts.put("jelly.kettle", """
        formula jelly
          percent of charge
          batch 700 g
        stage pot
          12 % glucose
          0.4 % of water salt
          q.s. water
          boil for 2 min
        """);
    return texts;
  }
}
