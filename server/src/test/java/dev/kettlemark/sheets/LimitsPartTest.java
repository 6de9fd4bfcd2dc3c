package dev.kettlemark.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.library.Snapshot;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LimitsPartTest {

  private static final Snapshot SAMPLES = SheetBench.samples();

  private static final Snapshot JELLY = SheetBench.of("""
      house quay "Quay"
        altitude     0 m
        thermometer  stick  reads 0.1 °C  to 200 °C

      formula sour-jelly "Sour jelly"
        percent   of charge
        batch     1000 g
        expect    acidity 3.2-3.5 pH
        expect    moisture 20 % ± 1
        expect    overrun 10-20 %

      stage pan
        60.00 %   white-sugar
        30.00 %   water
         1.00 %   citric-acid-solution-50
         9.00 %   glucose-syrup-42
        boil      under lid until dissolved
        cook      to 112 °C
        check     solids 80 % ± 1
      """);

  private static SheetContent line(String name) {
    return SheetBench.sheet(SAMPLES, SheetBench.request(name, SheetReader.PRODUCTION, "en-GB"));
  }

  private static Map<String, Double> figures(SheetContent sheet) {
    Map<String, Double> figures = new TreeMap<>();
    sheet
        .figures()
        .forEach(figure -> figure.reach().ifKnown(reach -> figures.put(figure.id(), reach.best())));
    return figures;
  }

  private static double figure(SheetContent sheet, String id) {
    return figures(sheet).getOrDefault(id, Double.NaN);
  }

  private static String text(Snapshot snapshot, String name, String tag) {
    String all = SheetMarkdown.of(
        SheetBench.sheet(snapshot, SheetBench.request(name, SheetReader.PRODUCTION, tag)));
    return all;
  }

  @ParameterizedTest
  @EnumSource(SheetReader.class)
  void standsOnTheSheetOfALineAlone(SheetReader reader) {
    SheetContent sheet =
        SheetBench.sheet(SAMPLES, SheetBench.request("heather-nougat", reader, "en-GB"));
    boolean isLine = reader == SheetReader.PRODUCTION;
    assertEquals(isLine, sheet.part(Part.Kind.LIMITS).isPresent());
    boolean isKitchen = reader == SheetReader.CHEF || reader == SheetReader.HOME;
    assertEquals(isKitchen, sheet.part(Part.Kind.TROUBLE).isPresent());
  }

  /** {@code cook to 119 °C ± 1}: 118 and 120. */
  @Test
  void takesTheLimitsOfTheStep() {
    SheetContent sheet = line("chewy-caramel");
    assertEquals(119, figure(sheet, "chewy-caramel.base.5.limit.target"));
    assertEquals(118, figure(sheet, "chewy-caramel.base.5.limit.lower"));
    assertEquals(120, figure(sheet, "chewy-caramel.base.5.limit.upper"));
    assertEquals(121, figure(sheet, "chewy-caramel.base.5.limit.over.0.read"));
    assertEquals(114, figure(sheet, "chewy-caramel.base.5.limit.under.1.read"));
  }

  /** Ten times the batch needs ten times the water. */
  @Test
  void growsWithTheBatch() {
    SheetContent small = SheetBench.sheet(
        SAMPLES,
        SheetBench.request("heather-nougat", SheetReader.PRODUCTION, "en-GB")
            .making(SheetBench.kilograms(2)));
    SheetContent large = SheetBench.sheet(
        SAMPLES,
        SheetBench.request("heather-nougat", SheetReader.PRODUCTION, "en-GB")
            .making(SheetBench.kilograms(20)));
    for (String word : new String[] {"over.0", "over.1", "under.0", "under.1", "solids.under"}) {
      String id = "heather-nougat.first-syrup.2.limit." + word;
      assertTrue(figure(small, id) > 0, id);
      assertEquals(10 * figure(small, id), figure(large, id), 1e-6, id);
    }
  }

  /**
   * By hand: M grams with a share s of solids and M·s/(s − 0.01) − M too much water; the same water, put back, is
   * what a mass balance gives.
   */
  @Test
  void countsAPointOfSolidsByMassBalance() {
    SheetContent sheet = line("heather-nougat");
    double mass = figure(sheet, "heather-nougat.first-syrup.2.left");
    double solids = figure(sheet, "heather-nougat.first-syrup.2.limit.solids.target") / 100;
    assertEquals(
        mass * solids / (solids - 0.01) - mass,
        figure(sheet, "heather-nougat.first-syrup.2.limit.solids.under"),
        1e-6);
    assertEquals(
        mass - mass * solids / (solids + 0.01),
        figure(sheet, "heather-nougat.first-syrup.2.limit.solids.over"),
        1e-6);
  }

  /** By hand: 82 % ± 2 of 1800 g are 1440 to 1512 g, and a point is 18 g. */
  @Test
  void weighsTheYield() {
    SheetContent sheet = line("chewy-caramel");
    assertEquals(1440, figure(sheet, "chewy-caramel.limit.yield.lower.weight"), 1e-9);
    assertEquals(1512, figure(sheet, "chewy-caramel.limit.yield.upper.weight"), 1e-9);
    assertEquals(18, figure(sheet, "chewy-caramel.limit.yield.point"), 1e-9);
  }

  /** By hand: 0.85–1.05 g/mL has 0.95 in its middle; at 1.10 a piece of one size has 15.8 % more. */
  @Test
  void tellsWhatAHeavyFoamFills() {
    SheetContent sheet = line("heather-nougat");
    String id = "heather-nougat.limit.density.over";
    double mass = figure(sheet, "heather-nougat.cooked");
    assertEquals(1.10, figure(sheet, id + ".read"), 1e-9);
    assertEquals(mass / 1.10, figure(sheet, id + ".fills"), 1e-6);
    assertEquals(mass / 0.95, figure(sheet, id + ".meant"), 1e-6);
    assertEquals(100 * (1.10 / 0.95 - 1), figure(sheet, id + ".piece"), 1e-9);
  }

  /** A dose of acid needs to know how the mass buffers; nobody has said. */
  @ParameterizedTest
  @CsvSource({
    "en-GB, 'Dose not computed, because nobody has stated how this mass buffers'",
    "de-DE, 'Dosis nicht berechnet, denn niemand hat angegeben, wie diese Masse puffert'",
    "fr-FR, 'Dose non calculée, car personne n’a indiqué le pouvoir tampon de cette masse'"
  })
  void neverGuessesADoseOfAcid(String tag, String said) {
    String page = text(JELLY, "sour-jelly", tag);
    assertTrue(page.contains(said), page);
    assertFalse(page.contains("declares no pH"));
  }

  @ParameterizedTest
  @CsvSource({
    "en-GB, 'This formula declares no pH', 'This formula declares no water activity'",
    "de-DE, 'Diese Rezeptur gibt keinen pH an', 'Diese Rezeptur gibt keine Wasseraktivität an'",
    "fr-FR, 'Cette formule ne déclare aucun pH', 'Cette formule ne déclare aucune activité de l’eau'"
  })
  void saysWhatIsNotDeclared(String tag, String acidity, String activity) {
    assertTrue(text(SAMPLES, "orchard-bar", tag).contains(acidity));
    assertFalse(text(SAMPLES, "orchard-bar", tag).contains(activity));
    assertTrue(text(JELLY, "sour-jelly", tag).contains(activity));
    assertFalse(text(JELLY, "sour-jelly", tag).contains(acidity));
  }

  /** Without a tolerance nothing finer can be asked for than a probe shows: one degree, the usual threshold. */
  @Test
  void asksForNoFinerLimitThanAProbeShows() {
    SheetContent sheet =
        SheetBench.sheet(JELLY, SheetBench.request("sour-jelly", SheetReader.PRODUCTION, "en-GB"));
    assertEquals(111, figure(sheet, "sour-jelly.pan.2.limit.lower"), 1e-9);
    assertEquals(113, figure(sheet, "sour-jelly.pan.2.limit.upper"), 1e-9);
    assertTrue(SheetMarkdown.of(sheet).contains("thermometer (stick); no tolerance is written"));
    assertEquals(79, figure(sheet, "sour-jelly.pan.3.limit.solids.lower"), 1e-9);
    assertEquals(19, figure(sheet, "sour-jelly.limit.moisture.lower"), 1e-9);
  }

  /** At a height the thermometer reads less for the same solids, and the limits with it. */
  @Test
  void readsAsTheKitchenDoes() {
    Snapshot high = SheetBench.of("""
        house ridge "Ridge"
          altitude  2000 m

        formula candy "Candy"
          percent   of charge
          batch     1000 g

        stage pan
          70.00 %   white-sugar
          30.00 %   water
          boil      under lid until dissolved
          cook      to 130 °C ± 1 at sea-level
        """);
    SheetContent sheet =
        SheetBench.sheet(high, SheetBench.request("candy", SheetReader.PRODUCTION, "en-GB"));
    double target = figure(sheet, "candy.pan.2.limit.target");
    // Water boils some 6.7 °C lower at 2000 m: ICAO standard atmosphere and steam tables, from
    // memory.
    assertEquals(130 - 7, target, 1.5);
    assertTrue(figure(sheet, "candy.pan.2.limit.lower") < target);
    assertTrue(figure(sheet, "candy.pan.2.limit.over.0") > 0);
  }
}
