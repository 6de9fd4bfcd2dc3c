package dev.kettlemark.sheets;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A shelf life is known by a batch that was kept, or it is not known. */
class StorageProofTest {

  private static final String KITCHEN = """
      house quay "Quay"
        altitude  0 m

      formula toffee "Toffee"
        version   2  on 2026-03-01
        percent   of charge
        batch     1000 g

      stage pan
        60.00 %   white-sugar
        20.00 %   glucose-syrup-42
        20.00 %   water
        boil      under lid until dissolved
        cook      to 130 °C ± 1

      product drop "Toffee drop"
        centre    10 g  toffee
        make      20 pieces
        shelf     3 months at 15-20 °C below 55 %RH

      """;

  private static String keeping(String trials, String name, SheetReader reader, String tag) {
    String all = SheetMarkdown.of(
        SheetBench.sheet(SheetBench.of(KITCHEN + trials), SheetBench.request(name, reader, tag)));
    int start = all.indexOf("## " + heading(tag));
    return all.substring(start, all.indexOf("\n## ", start + 3));
  }

  private static String heading(String tag) {
    return switch (tag.substring(0, 2)) {
      case "de" -> "Aufbewahrung";
      case "fr" -> "Conservation";
      default -> "Keeping";
    };
  }

  private static String trial(String day, String lines) {
    return "trial T-1 of toffee on " + day + " at quay\n  batch 1000 g\n" + lines;
  }

  private static String english(String trials) {
    return keeping(trials, "drop", SheetReader.HOME, "en-GB");
  }

  @ParameterizedTest
  @CsvSource({
    "en-GB, 'How it was established: not at all', 'an estimate, and not a shelf life'",
    "de-DE, 'Wie ermittelt: gar nicht', 'eine Schätzung, und keine Haltbarkeit'",
    "fr-FR, 'elle ne l’est pas', 'une estimation, et non une durée de conservation'"
  })
  void isNotEstablishedByAWord(String tag, String how, String estimate) {
    String told = keeping(
        trial("2026-04-01", "  measured 0.41 aw pan at 24 h\n"), "drop", SheetReader.CHEF, tag);
    assertTrue(told.contains(how), told);
    assertTrue(told.contains(estimate), told);
  }

  @Test
  void tellsTheBatchThatWasKept() {
    String told = english(trial(
        "2026-04-01",
        "  measured 0.40 aw pan at 24 h\n  measured 0.43 aw pan at 40 days\n"
            + "  kept 6 weeks at 18-21 °C below 55 %RH \"no grain\"\n"));
    assertTrue(told.contains("toffee of trial T-1 was kept 6\u202fweeks at 18–21\u202f°C"), told);
    assertTrue(told.contains("“no grain”"), told);
    assertTrue(told.contains("water activity 0.43\u202faw after 40\u202fdays"), told);
    assertTrue(told.contains("The 3\u202fmonths are longer than any batch was kept"), told);
    assertFalse(told.contains("0.40"), told);
  }

  @Test
  void isCoveredByALongerBatch() {
    String told = english(trial("2026-04-01", "  kept 100 days at 20 °C\n"));
    assertTrue(told.contains("are no longer than the longest that a batch was kept"), told);
    assertTrue(told.contains("Neither water activity nor water of trial T-1 was measured"), told);
  }

  /** A range is proof for its shorter end only. */
  @Test
  void countsTheShorterEnd() {
    String told = english(trial("2026-04-01", "  kept 80-100 days at 20 °C\n"));
    assertTrue(told.contains("longer than any batch was kept"), told);
  }

  @Test
  void provesNothingOfAnotherVersion() {
    String told = english(trial("2026-02-01", "  kept 100 days at 20 °C\n"));
    assertTrue(told.contains("Trial T-1 made an older version"), told);
    assertTrue(told.contains("For 3\u202fmonths there is no proof"), told);
  }

  @Test
  void provesNothingOfWhatWasMadeOtherwise() {
    String told =
        english(trial("2026-04-01", "  changed \"half the syrup\"\n  kept 100 days at 20 °C\n"));
    assertTrue(told.contains("Trial T-1 was made otherwise than written"), told);
    assertTrue(told.contains("there is no proof"), told);
  }

  @Test
  void saysThatItLayCooler() {
    String told = english(trial("2026-04-01", "  kept 100 days at 4 °C\n"));
    assertTrue(told.contains("lay cooler than the shelf life allows"), told);
    assertFalse(english(trial("2026-04-01", "  kept 100 days at 20 °C\n")).contains("cooler"));
  }

  /** A formula has no shelf life of its own; a batch that was kept is told all the same. */
  @Test
  void isToldOfAFormulaToo() {
    String told =
        keeping(trial("2026-04-01", "  kept 30 days\n"), "toffee", SheetReader.PRODUCTION, "en-GB");
    assertTrue(told.contains("Shelf life: not established"), told);
    assertTrue(told.contains("was kept 30\u202fdays (where, nobody has said)"), told);
    assertTrue(told.contains("the author has stated none"), told);
  }
}
