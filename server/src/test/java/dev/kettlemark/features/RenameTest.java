package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import dev.kettlemark.features.Rename.Answer;
import dev.kettlemark.features.Symbols.Found;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.syntax.ParsedText;
import dev.kettlemark.text.TextEdit;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class RenameTest {

  private static final String FORMULA = """
      formula syrup "syrup of sugar"
        basis wet = water in pan # wet and pan
      stage pan
        1 % of wet sug<|>ar-x
        10 g water
        blend sugar-x into water until thread
      stage rest
        all of pan
      ingredient sugar-x "sugar-x"
      """;

  @Test
  void changesEveryPlaceButQuotesAndComments() {
    check(FORMULA, "sweet", """
        formula syrup "syrup of sugar"
          basis wet = water in pan # wet and pan
        stage pan
          1 % of wet sweet
          10 g water
          blend sweet into water until thread
        stage rest
          all of pan
        ingredient sweet "sugar-x"
        """);
  }

  @Test
  void tellsWhatWouldBeRenamed() {
    FeatureFixture fixture = FeatureFixture.of(FORMULA);
    Answer<Rename.Target> answer =
        Rename.prepare(fixture.snapshot(), fixture.document(), fixture.offset());
    Rename.Target target = given(answer);
    assertEquals("sugar-x", target.placeholder());
    assertEquals("sugar-x", fixture.text(target.span()));
  }

  @Test
  void refusesWhatIsNoName() {
    for (String word : List.of(
        "",
        "two words",
        "9lives",
        "of",
        "g",
        "stage",
        "again",
        "charge",
        "a\nb",
        "a#b",
        "a,b",
        "\"a\"",
        "a-")) {
      assertTrue(refusal(FORMULA, word).contains("cannot be a name"), word);
    }
  }

  @Test
  void takesNamesOfEveryScript() {
    for (String word : List.of("pâte", "kağıt", "砂糖", "e\u0301clair", "x2-y")) {
      assertTrue(edits(FORMULA, word) instanceof Answer.Given, word);
    }
  }

  @Test
  void refusesANameThatIsTaken() {
    assertEquals(
        "`water` already names a material in line 2 of first.kettle", refusal(FORMULA, "water"));
    assertEquals(
        "`rest` already names a stage in line 7 of first.kettle",
        refusal(FORMULA.replace("<|>", "").replace("stage pan", "stage p<|>an"), "rest"));
  }

  @Test
  void refusesWhatWouldChangeAnotherMeaning() {
    assertEquals(
        "with the name `pan` another name would change its meaning in line 6 of first.kettle",
        refusal(FORMULA, "pan"));
  }

  @Test
  void leavesThePantryAlone() {
    assertEquals(
        "`water` belongs to the built-in pantry and keeps its name; an ingredient of the same name in your library overrides it",
        refusal("formula f\nstage a\n  1 g wa<|>ter\n", "eau"));
    assertEquals(
        "`nowhere` is declared nowhere, so there is nothing to rename",
        refusal("formula f\nstage a\n  1 g no<|>where\n", "somewhere"));
    assertEquals(
        "there is no name here that could be changed",
        refusal("formula f\n  batch 1<|>0 g\n", "x"));
  }

  @Test
  void takesAVariantsStagesAlong() {
    check("""
        formula f
        stage fo<|>am
          1 g water
        variant v of f
          add 1 g honey in foam
        stage foam again
          whip
        """, "froth", """
        formula f
        stage froth
          1 g water
        variant v of f
          add 1 g honey in froth
        stage froth again
          whip
        """);
  }

  @Test
  void goesThereAndBackForEverySymbolOfTheSamples() {
    Snapshot snapshot = FeatureFixture.snapshot(FeatureFixture.samples("gannet-slip"));
    List<Found> definitions = snapshot.library().ownDocuments().stream()
        .flatMap(document -> Symbols.in(snapshot, document))
        .filter(found -> found.occurrence().defines())
        .toList();
    assertTrue(definitions.size() > 40, () -> "only " + definitions.size() + " symbols");
    for (Found found : definitions) {
      String name = found.symbol().name();
      Snapshot there = applied(snapshot, renamed(snapshot, found, "other-word"));
      Found moved = Symbols.everywhere(there)
          .filter(other -> other.symbol().name().equals("other-word"))
          .filter(other -> other.occurrence().defines())
          .findFirst()
          .orElseThrow();
      Snapshot back = applied(there, renamed(there, moved, name));
      assertEquals(texts(snapshot), texts(back), name);
      assertTrue(!texts(snapshot).equals(texts(there)), name);
    }
  }

  private static Map<String, List<TextEdit>> renamed(Snapshot snapshot, Found found, String name) {
    Document document = snapshot.library().document(found.entry().uri()).orElseThrow();
    return given(Rename.edits(snapshot, document, found.place().span().start(), name));
  }

  private static List<String> texts(Snapshot snapshot) {
    return snapshot.library().ownDocuments().stream()
        .map(document -> document.text().source().text())
        .toList();
  }

  private static Snapshot applied(Snapshot snapshot, Map<String, List<TextEdit>> edits) {
    Library library = snapshot.library();
    for (Map.Entry<String, List<TextEdit>> edit : edits.entrySet()) {
      Document document = library.document(edit.getKey()).orElseThrow();
      String text = document.text().source().with(edit.getValue()).text();
      library = library.with(document.with(ParsedText.of(text)));
    }
    return snapshot.with(library);
  }

  private static void check(String marked, String newName, String expected) {
    FeatureFixture fixture = FeatureFixture.of(marked);
    Map<String, List<TextEdit>> edits = given(edits(marked, newName));
    assertEquals(
        expected,
        fixture
            .document()
            .text()
            .source()
            .with(edits.getOrDefault(fixture.document().uri(), List.of()))
            .text());
  }

  private static Answer<Map<String, List<TextEdit>>> edits(String marked, String newName) {
    FeatureFixture fixture = FeatureFixture.of(marked);
    return Rename.edits(fixture.snapshot(), fixture.document(), fixture.offset(), newName);
  }

  private static String refusal(String marked, String newName) {
    return edits(marked, newName) instanceof Answer.Refused<Map<String, List<TextEdit>>> refused
        ? refused.reason()
        : fail("was not refused: " + newName);
  }

  private static <T> T given(Answer<T> answer) {
    return answer instanceof Answer.Given<T> given
        ? given.value()
        : fail(((Answer.Refused<T>) answer).reason());
  }
}
