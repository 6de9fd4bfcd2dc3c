package dev.kettlemark.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import dev.kettlemark.library.Snapshot;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Every form of a sheet, and every sheet of one subject, tells the same figures. */
class SheetFiguresTest {

  private static final Snapshot SAMPLES = SheetBench.samples();

  private static SheetContent sheet(String name, SheetReader reader, String tag) {
    return SheetBench.sheet(SAMPLES, SheetBench.request(name, reader, tag));
  }

  private static Map<String, Double> inPage(SheetContent sheet) {
    NodeList data = SheetHtmlTest.parse(SheetHtml.of(sheet)).getElementsByTagName("data");
    Map<String, Double> figures = new TreeMap<>();
    for (int i = 0; i < data.getLength(); i++) {
      Element one = (Element) data.item(i);
      if (!one.getAttribute("value").isEmpty()) {
        double value = Double.parseDouble(one.getAttribute("value"));
        Double before = figures.put(one.getAttribute("data-id"), value);
        assertTrue(before == null || before == value, one.getAttribute("data-id"));
      }
    }
    return figures;
  }

  private static Map<String, Double> inJson(SheetContent sheet) {
    JsonArray all =
        JsonParser.parseString(SheetJson.of(sheet)).getAsJsonObject().getAsJsonArray("figures");
    Map<String, Double> figures = new TreeMap<>();
    for (JsonElement one : all) {
      JsonObject figure = one.getAsJsonObject();
      if (!figure.get("value").isJsonNull()) {
        figures.put(figure.get("id").getAsString(), figure.get("value").getAsDouble());
      }
    }
    return figures;
  }

  private static Map<String, Double> inCsv(SheetContent sheet) {
    Map<String, Double> figures = new TreeMap<>();
    for (String line : SheetCsv.of(sheet).split("\r\n")) {
      String[] cells = line.split(",", 3);
      if (!cells[0].equals("id") && !cells[1].isEmpty()) {
        figures.put(cells[0], Double.parseDouble(cells[1]));
      }
    }
    return figures;
  }

  @ParameterizedTest
  @EnumSource(SheetReader.class)
  void pageJsonAndCsvHoldTheSame(SheetReader reader) {
    for (String name : List.of("heather-nougat", "caramel-dome", "orchard-bar-42")) {
      SheetContent sheet = sheet(name, reader, "en-GB");
      Map<String, Double> page = inPage(sheet);
      assertTrue(page.size() > 20, name);
      assertEquals(page, inJson(sheet), name);
      assertEquals(page, inCsv(sheet), name);
    }
  }

  /** What two readers are both told, they are told alike. */
  @ParameterizedTest
  @ValueSource(strings = {"heather-nougat", "caramel-dome", "orchard-bar-42", "raspberry-jelly"})
  void theSheetsOfOneSubjectAgree(String name) {
    Map<String, Double> chef = inJson(sheet(name, SheetReader.CHEF, "en-GB"));
    int shared = 0;
    for (SheetReader reader : SheetReader.values()) {
      for (Map.Entry<String, Double> other :
          inJson(sheet(name, reader, "en-US")).entrySet()) {
        Double own = chef.get(other.getKey());
        if (own != null) {
          assertEquals(own, other.getValue(), 0, reader + " " + other.getKey());
          shared++;
        }
      }
    }
    assertTrue(shared > 60, "only " + shared);
  }

  /** One id means one figure. */
  @ParameterizedTest
  @EnumSource(SheetReader.class)
  void noIdIsUsedTwice(SheetReader reader) {
    for (String name : List.of("heather-nougat", "caramel-dome", "peanut-brittle")) {
      Map<String, SheetFigure> byId = new HashMap<>();
      TreeSet<String> differing = new TreeSet<>();
      sheet(name, reader, "en-GB").allFigures().forEach(figure -> {
        SheetFigure before = byId.putIfAbsent(figure.id(), figure);
        if (before != null && !before.reach().equals(figure.reach())) {
          differing.add(figure.id());
        }
      });
      assertEquals(new TreeSet<>(), differing, name);
    }
  }

  /** By hand: 12 centres of 12 g with 3 % lost on the way are 144 / 0.97 = 148.45 g of caramel. */
  @Test
  void makesTwelveForAHomeInAmerica() {
    SheetRequest twelve = SheetBench.declared(SAMPLES, "dome-home").making(SheetBench.pieces(12));
    SheetContent sheet = SheetBench.sheet(SAMPLES, twelve);
    Map<String, Double> figures = inJson(sheet);
    assertEquals(12, figures.getOrDefault("yield.pieces", Double.NaN));
    assertEquals(12 / 0.7, figures.getOrDefault("yield.piece", Double.NaN), 1e-9);
    double cooked = figures.getOrDefault("chewy-caramel.finished", Double.NaN) / 0.97;
    assertEquals(144 / 0.97, cooked, 0.1);
    String page = SheetHtml.of(sheet);
    assertTrue(page.contains("246 ± 1.8\u202f°F (119 ± 1\u202f°C)"), "°F first");
    assertTrue(page.contains("weigh only"), "gums and salt are never told by the spoon");
    assertFalse(figures.containsKey("chewy-caramel.base.soy-lecithin.volume"));
    assertTrue(figures.containsKey("chewy-caramel.base.white-sugar.volume"));
  }

  /** By hand: 1.05 % of 50 kg are 525 g; what a bowl cannot whip at once is split. */
  @Test
  void makesFiftyKilogramsForALine() {
    SheetContent sheet = SheetBench.sheet(
        SAMPLES,
        SheetBench.request("heather-nougat", SheetReader.PRODUCTION, "en-GB")
            .making(SheetBench.kilograms(50)));
    Map<String, Double> figures = inJson(sheet);
    assertEquals(
        525, figures.getOrDefault("heather-nougat.foam.egg-white-powder.weight", Double.NaN), 0.5);
    assertEquals(50_000, figures.getOrDefault("heather-nougat.charge", Double.NaN), 0.5);
    assertTrue(figures.getOrDefault("heather-nougat.body.charges", Double.NaN) > 1);
    assertTrue(SheetMarkdown.of(sheet).contains("14.500\u202fkg"), "29 % of 50 kg");
  }

  /** Shown in whole °F, a temperature comes back within half a degree Celsius. */
  @Test
  void fahrenheitLeadsBackToTheSameCelsius() {
    SheetContent sheet = sheet("peanut-brittle", SheetReader.HOME, "en-US");
    Pattern fahrenheit = Pattern.compile("(\\d+(?:\\.\\d)?)(?: ± [0-9.]+)?\u202f°F");
    int read = 0;
    for (SheetFigure figure : sheet.figures()) {
      Matcher shown = fahrenheit.matcher(sheet.speech().text(figure));
      if (figure.unit() == SheetUnit.CELSIUS
          && figure.basis() == SheetFigure.Basis.WRITTEN
          && figure.spread() != SheetFigure.Spread.RANGE
          && shown.find()) {
        double back = (Double.parseDouble(shown.group(1)) - 32) / 1.8;
        double celsius = figure.reach().map(SheetFigure.Reach::best).orElse(Double.NaN);
        assertEquals(celsius, back, 0.5, figure.id());
        read++;
      }
    }
    assertTrue(read >= 4, "only " + read);
    assertTrue(SheetHtml.of(sheet).contains("300 ± 1.8\u202f°F (149 ± 1\u202f°C)"));
  }

  /**
   * By hand from the prices of the samples, which are invented: a dome's coat is 5.14 g of couverture at
   * 12.40 per kg, and each of 120 domes bears a part of the whole batch of caramel.
   */
  @Test
  void costsAPieceWithItsCoat() {
    Map<String, Double> figures = inJson(sheet("caramel-dome", SheetReader.PRODUCTION, "en-GB"));
    double coat = 120 * (12 / 0.7 - 12) * 12.40 / 1000;
    assertEquals(coat, figures.getOrDefault("need.couverture-milk-38.cost", Double.NaN), 1e-6);
    double caramel = figures.getOrDefault("chewy-caramel.cost", Double.NaN);
    assertEquals((coat + caramel) / 120, figures.getOrDefault("cost.piece", Double.NaN), 1e-9);
  }

  /** A bar without a price for its raspberries is bounded from below, and not given a cost. */
  @Test
  void boundsACostThatIsNotKnownFromBelow() {
    SheetContent sheet = sheet("orchard-bar-42", SheetReader.PRODUCTION, "en-GB");
    Map<String, Double> figures = inJson(sheet);
    assertFalse(figures.containsKey("cost.piece"));
    assertTrue(figures.getOrDefault("cost.piece.least", 0.0) > 0.1);
    assertTrue(SheetMarkdown.of(sheet).contains("nobody has stated a price of raspberry pieces"));
  }

  /** Regulation (EU) No 1169/2011, annex XIV: 17 kJ and 4 kcal for a gram of carbohydrate; from memory. */
  @Test
  void printsTheEnergyOfEachMarketByItsOwnFactors() {
    Snapshot sugar = SheetBench.of("""
        house quay "Quay"
          altitude  0 m
          market    EU, US

        ingredient pure-sugar "Pure sugar"
          form      crystals
          contains  100.00 % sucrose
          label     "sugar"

        formula lump "Lump"
          percent   of charge
          batch     1000 g
          makes     50 pieces of 20 g

        stage mix
          100.00 %  pure-sugar
          mix       pure-sugar
        """);
    Map<String, Double> figures = inJson(
        SheetBench.sheet(sugar, SheetBench.request("lump", SheetReader.PRODUCTION, "en-GB")));
    assertEquals(1700, figures.getOrDefault("nutrition.eu.energy.kj.in-100-g", 0.0), 1e-9);
    assertEquals(400, figures.getOrDefault("nutrition.eu.energy.kcal.in-100-g", 0.0), 1e-9);
    assertEquals(80, figures.getOrDefault("nutrition.eu.energy.kcal.in-piece", 0.0), 1e-9);
    assertEquals(400, figures.getOrDefault("nutrition.us.calories.kcal.in-100-g", 0.0), 1e-9);
  }

  /** A chef and a home cook are told of five troubles at least where the figures speak for them. */
  @ParameterizedTest
  @ValueSource(strings = {"heather-nougat", "caramel-dome", "raspberry-jelly", "peanut-brittle"})
  void tellsOfEnoughTrouble(String name) {
    for (SheetReader reader : List.of(SheetReader.CHEF, SheetReader.HOME)) {
      long rows = sheet(name, reader, "en-GB").part(Part.Kind.TROUBLE).stream()
          .flatMap(part -> part.blocks().stream())
          .flatMap(block ->
              block instanceof Block.Grid grid ? grid.rows().stream() : Stream.<Block.Row>empty())
          .count();
      assertTrue(rows >= 5, name + " " + rows);
    }
  }

  /** Fondant grains by intent, and a home cook has no pan of nine litres. */
  @Test
  void saysNothingThatIsNoTroubleOrNotAtHome() {
    String fondant = SheetMarkdown.of(sheet("white-fondant", SheetReader.HOME, "en-GB"));
    assertFalse(fondant.contains("Grains in store"));
    assertTrue(fondant.contains("Coarse on the tongue"));
    assertFalse(
        SheetMarkdown.of(sheet("caramel-dome", SheetReader.HOME, "en-GB")).contains("holding 9"));
  }
}
