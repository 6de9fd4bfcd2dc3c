package dev.kettlemark.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.answers.Shelf;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Component;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class EggPartTest {

  private static final Snapshot SAMPLES = SheetBench.samples();

  private static final Snapshot ALONE = SheetBench.of("""
      formula cloud "Cloud"
        percent   of charge
        batch     1000 g

      stage bowl
        40.00 %   aquafaba
        59.00 %   white-sugar
         1.00 %   potato-whip-protein
        whip      aquafaba, potato-whip-protein, white-sugar on high for 8 min until stiff-peak
      """);

  private static Map<String, Double> figures(SheetContent sheet) {
    Map<String, Double> figures = new TreeMap<>();
    sheet
        .figures()
        .forEach(figure -> figure.reach().ifKnown(reach -> figures.put(figure.id(), reach.best())));
    return figures;
  }

  private static SheetContent home(Snapshot snapshot, String name, String tag) {
    return SheetBench.sheet(snapshot, SheetBench.request(name, SheetReader.HOME, tag));
  }

  @ParameterizedTest
  @EnumSource(SheetReader.class)
  void isToldAtHomeAlone(SheetReader reader) {
    SheetContent sheet =
        SheetBench.sheet(SAMPLES, SheetBench.request("heather-nougat-plant", reader, "en-GB"));
    assertEquals(reader == SheetReader.HOME, sheet.part(Part.Kind.EGG).isPresent());
  }

  /** What is made with egg, and what has no foam, has nothing to compare. */
  @ParameterizedTest
  @CsvSource({
    "heather-nougat",
    "egg-honey-nougat",
    "italian-meringue",
    "caramel-dome",
    "orchard-bar"
  })
  void isAbsentWhereItMeansNothing(String name) {
    assertTrue(home(SAMPLES, name, "en-GB").part(Part.Kind.EGG).isEmpty());
  }

  /** By hand: the two doses of the library times the protein of the pantry. */
  @Test
  void comparesWithTheFormulaThatItComesFrom() {
    Map<String, Double> figures = figures(home(SAMPLES, "heather-nougat-plant", "en-GB"));
    assertEquals(
        1.05 * protein(SAMPLES, "egg-white-powder"),
        figures.getOrDefault("heather-nougat.whipping-protein", 0.0),
        1e-9);
    assertEquals(
        0.95 * protein(SAMPLES, "potato-whip-protein"),
        figures.getOrDefault("heather-nougat-plant.whipping-protein", 0.0),
        1e-9);
    // 0.12 parts of powder with 0.88 of water are one of fresh white: egg board sheet, as the
    // pantry cites it.
    assertEquals(1.05 / 0.12, figures.getOrDefault("heather-nougat.as-egg-white", 0.0), 1e-9);
    assertFalse(figures.containsKey("heather-nougat-plant.as-egg-white"));
    // 3 min and 6 min of `whip … for`; the foam itself ends by its look.
    assertEquals(540, figures.getOrDefault("heather-nougat-plant.whipping-time.said", 0.0), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "en-GB, 'equal protein is not yet an equal foam', 'goes without'",
    "de-DE, 'gleich viel Eiweiß ist noch kein gleicher Schaum', 'kommt sie ohne'",
    "fr-FR, 'autant de protéines ne font pas encore la même mousse', 'elle se passe de'"
  })
  void saysWhatItDoesNotKnow(String tag, String unknown, String others) {
    String page = SheetMarkdown.of(home(SAMPLES, "heather-nougat-plant", tag));
    assertTrue(page.contains(unknown), page);
    assertTrue(page.contains(others), page);
  }

  /** By hand: the ratio of the proteins, and the pantry's own stand-in of one to one. */
  @Test
  void countsAsEggWhiteWhereThereIsNoSister() {
    Map<String, Double> figures = figures(home(ALONE, "cloud", "en-GB"));
    double white = protein(ALONE, "egg-white");
    assertEquals(400, figures.getOrDefault("cloud.egg.aquafaba", 0.0), 1e-9);
    assertEquals(400, figures.getOrDefault("cloud.egg.aquafaba.by-custom", 0.0), 1e-9);
    assertEquals(
        400 * protein(ALONE, "aquafaba") / white,
        figures.getOrDefault("cloud.egg.aquafaba.by-protein", 0.0),
        1e-9);
    assertEquals(
        10 * protein(ALONE, "potato-whip-protein") / white,
        figures.getOrDefault("cloud.egg.potato-whip-protein.by-protein", 0.0),
        1e-9);
    assertFalse(figures.containsKey("cloud.egg.potato-whip-protein.by-custom"));
  }

  private static double protein(Snapshot snapshot, String name) {
    return new Shelf(snapshot)
        .material(name)
        .orElseThrow()
        .composition()
        .map(all -> all.fraction(Component.PROTEIN))
        .orElse(Double.NaN);
  }
}
