package dev.kettlemark.preview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.SampleTexts;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.sheets.SheetReader;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Element;

class PreviewTest {

  private static final Snapshot SAMPLES = Previewed.samples();

  private static final String LIBRARY = """
      formula plain "Plain syrup"
        percent   of charge
        batch     1000 g

      stage pan "The syrup"
        60.00 %             white-sugar
        40.00 %             water
        boil      under lid until dissolved
        cook      to 110 °C

      variant sweet "Sweet syrup" of plain
        change    70.00 % white-sugar
        change    30.00 % water

      ingredient moon-honey
        solids    82 %

      sheet lost of nowhere for chef in en-GB
      """;

  private static Preview of(Snapshot snapshot, String name, View view) {
    return Preview.named(snapshot, name, Previewed.request(view));
  }

  @ParameterizedTest
  @EnumSource
  void everySectionOfTheSamplesIsShown(View view) {
    int shown = 0;
    for (Entry entry : Previewed.entries(SAMPLES)) {
      Preview preview = Preview.of(SAMPLES, entry, Previewed.request(view));
      Previewed.holds(preview);
      shown += preview.anchors().isEmpty() ? 0 : 1;
    }
    int all = shown;
    assertTrue(shown >= 15, () -> "only " + all + " are led to from their text");
  }

  @ParameterizedTest
  @EnumSource
  void everyMistakeIsShownAsFarAsItIsKnown(View view) {
    for (Document mistake : SampleTexts.mistakes()) {
      Snapshot alone = Previewed.alone(mistake);
      for (Entry entry : Previewed.entries(alone)) {
        Previewed.holds(Preview.of(alone, entry, Previewed.request(view)));
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void everyReaderIsLedToTheAmountsAndSteps(SheetReader reader) {
    Preview preview = Preview.named(
        SAMPLES, "italian-meringue", Previewed.request(View.SHEET, reader.word(), "en-GB"));
    Element root = Previewed.holds(preview);
    for (Anchor anchor : preview.anchors()) {
      String line = Previewed.line(SAMPLES, anchor);
      String told = Previewed.element(root, anchor.id()).getTextContent();
      if (line.endsWith("cream-of-tartar") && anchor.id().contains("amount")) {
        assertTrue(told.toLowerCase(Locale.ROOT).contains("cream of tartar"), told);
      }
      if (line.startsWith("cook")) {
        assertTrue(told.contains("119"), told);
      }
    }
    List<String> lines = preview.anchors().stream()
        .map(anchor -> Previewed.line(SAMPLES, anchor))
        .distinct()
        .toList();
    assertTrue(lines.contains("28.00 %             egg-white-pasteurised"), lines.toString());
    assertTrue(lines.contains("cook      to 119 °C ± 1"), lines.toString());
    assertTrue(lines.contains("stage syrup"), lines.toString());
  }

  @Test
  void whatAVariantTakesOverLeadsToItsParent() {
    Snapshot snapshot = Previewed.text(LIBRARY);
    Preview preview = of(snapshot, "sweet", View.SHEET);
    List<String> lines = preview.anchors().stream()
        .map(anchor -> Previewed.line(snapshot, anchor))
        .distinct()
        .toList();
    assertEquals(
        List.of(
            "stage pan \"The syrup\"",
            "change    70.00 % white-sugar",
            "change    30.00 % water",
            "boil      under lid until dissolved",
            "cook      to 110 °C"),
        lines);
  }

  @Test
  void aPictureIsLedToByTheLinesOfEachStage() {
    Preview preview = of(SAMPLES, "italian-meringue", View.FLOW);
    List<String> syrup = preview.anchors().stream()
        .filter(anchor -> anchor.id().endsWith("-stage-1"))
        .map(anchor -> Previewed.line(SAMPLES, anchor))
        .toList();
    assertEquals(
        List.of(
            "stage syrup",
            "50.00 %             white-sugar",
            "q.s.               water",
            "boil      under lid for 3 min until dissolved",
            "cook      to 119 °C ± 1"),
        syrup);
  }

  @Test
  void aProductIsLedToByWhatItIsMadeOf() {
    Preview preview = of(SAMPLES, "caramel-dome", View.SHEET);
    assertTrue(
        preview.anchors().stream()
            .anyMatch(anchor -> anchor.place().uri().endsWith("chewy-caramel.kettle")),
        preview.anchors().toString());
  }

  @Test
  void aDeclaredSheetSaysItsReaderAndLanguage() {
    Preview preview = of(SAMPLES, "dome-home", View.SHEET);
    assertEquals(Optional.of("home"), preview.request().readerWord());
    assertEquals(Optional.of("en-US"), preview.request().tag());
    assertEquals("dome-home", preview.name());
    Preview other =
        Preview.named(SAMPLES, "dome-home", Previewed.request(View.SHEET, "bench", "de-DE"));
    assertEquals(Optional.of("bench"), other.request().readerWord());
    assertEquals(Optional.of("de-DE"), other.request().tag());
    assertTrue(other.html().contains("lang=\"de-DE\""), other.html());
  }

  @ParameterizedTest
  @CsvSource({
    "nothing, The library has no formula",
    "moon-honey, Here stands no formula",
    "lost, There is no sheet of nowhere"
  })
  void whatIsMissingIsSaid(String name, String said) {
    Preview preview = of(Previewed.text(LIBRARY), name, View.SHEET);
    String told = Previewed.holds(preview).getTextContent();
    assertTrue(told.contains(said), told);
    assertEquals(List.of(), preview.anchors());
  }

  @ParameterizedTest
  @CsvSource({
    "de-DE, Die Sammlung hat keine Rezeptur",
    "fr-FR, La collection n’a ni formule",
    "eo, The library has no formula"
  })
  void whatIsMissingIsSaidInTheLanguageOfTheSheet(String tag, String said) {
    Preview preview = Preview.named(SAMPLES, "nothing", Previewed.request(View.SHEET, "chef", tag));
    assertTrue(Previewed.holds(preview).getTextContent().contains(said), preview.html());
  }

  /** Two shares that hang on each other have no solution, so there is nothing that a sheet could weigh. */
  @Test
  void aBrokenFormulaIsDrawnWhereThereIsNoSheet() {
    Snapshot snapshot = Previewed.text("""
        formula riddle
          percent   of charge
          batch     100 g

        stage pan
          60.00 %             white-sugar
          x %                 water
          boil      until dissolved
        """);
    Preview preview = of(snapshot, "riddle", View.SHEET);
    String told = Previewed.holds(preview).getTextContent();
    assertTrue(told.contains("There are errors in the text"), told);
    assertTrue(told.contains("white-sugar") || told.contains("White sugar"), told);
    assertFalse(preview.anchors().isEmpty());
  }

  @Test
  void aRightFormulaCarriesNoMark() {
    assertFalse(of(SAMPLES, "italian-meringue", View.SHEET).html().contains("notice"));
  }

  @Test
  void noTextBecomesMarkup() {
    Snapshot snapshot = Previewed.text("""
        formula syrup "<b>Plain</b> & <script>alert(1)</script>"
          percent   of charge
          batch     1000 g
          note      "<img src=x onerror='x'>"

        stage pan "<i>pan</i>"
          60.00 %             white-sugar
          40.00 %             water
          boil      under lid until dissolved
        """);
    for (View view : View.values()) {
      Element root = Previewed.holds(of(snapshot, "syrup", view));
      assertTrue(Previewed.all(root).stream()
          .noneMatch(one -> List.of("b", "i", "script").contains(one.getTagName())));
    }
  }

  @Test
  void aViewOrReaderThatDoesNotExistIsNoRequest() {
    assertTrue(PreviewRequest.of("smell", Optional.empty(), Optional.empty()).isEmpty());
    assertTrue(PreviewRequest.of("sheet", Optional.of("cat"), Optional.empty()).isEmpty());
  }
}
