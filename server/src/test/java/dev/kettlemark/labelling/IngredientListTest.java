package dev.kettlemark.labelling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.quantity.Ratio;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The order, the water and the quantities of a list of ingredients, worked out by hand.
 *
 * <p>Source, from memory: Regulation (EU) No 1169/2011, articles 18 to 22, annexes VII and VIII; 21 CFR 101.4.
 */
class IngredientListTest {

  private static IngredientList list(Market market, String text) {
    return IngredientList.of(LabelFixture.of(text).label("f"), market);
  }

  private static String formula(String title, String lines) {
    return "formula f \"" + title + "\"\n  percent of charge\nstage pan\n" + lines + "  mix\n";
  }

  @Test
  void standsInDescendingOrderOfWeight() {
    assertEquals(
        "Sugar, glucose syrup, water, corn starch.",
        list(Market.EU, formula("Base", """
              25 % glucose-syrup-42
              50 % white-sugar
              20 % water
               5 % corn-starch
            """)).text());
  }

  /** 30 % white and 25 % caster sugar are both sugar: 55 % comes before 45 %. */
  @Test
  void putsIngredientsOfOneNameTogether() {
    assertEquals("Sugar, honey.", list(Market.EU, formula("Base", """
              45 % honey
              30 % white-sugar
              25 % caster-sugar
            """)).text());
  }

  /** Water up to 5 % of the finished food may be left out; 6 % may not. */
  @Test
  void leavesOutLittleWater() {
    IngredientList little = list(Market.EU, formula("Base", "  95 % white-sugar\n  5 % water\n"));
    assertEquals("Sugar.", little.text());
    assertTrue(little
        .notes()
        .contains("added water is 5.00 % of the finished weight and may be left out"));
    assertEquals(
        "Sugar, water.",
        list(Market.EU, formula("Base", "  94 % white-sugar\n  6 % water\n")).text());
  }

  /** Annex VII, part A, point 1: the finished weight less all other ingredients as used. */
  @Test
  void countsWaterByDifference() {
    LabelFixture bench = LabelFixture.of("formula f\n  percent of charge\nstage pan\n"
        + "  50 % white-sugar\n  50 % water\n  cook to 108 °C\n");
    double sugar = bench.grams("f", "white-sugar");
    IngredientList list = IngredientList.of(bench.label("f"), Market.EU);
    double water = list.items().stream()
        .filter(item -> item.label().equals("water"))
        .findFirst()
        .orElseThrow()
        .share()
        .map(Ratio::percent)
        .orElse(Double.NaN);
    assertEquals(100 - sugar, water, 1e-9);
    assertTrue(water > 5 && water < 25, "water " + water);
  }

  /**
   * Regulation (EU) No 1169/2011, annex II, item 12, from memory: sulphur dioxide and sulphites of more than
   * 10 mg/kg in terms of the total SO2; article 21 asks for them to be emphasised.
   *
   * <p>By hand: apricots of 1500 mg/kg give 9 mg/kg at 0.6 %, 10.5 mg/kg at 0.7 %; at 1000 mg/kg and 1 % the
   * limit itself, which is not more than it.
   */
  @ParameterizedTest
  @CsvSource({"0.6, 1500, false", "0.7, 1500, true", "1, 1000, false", "1, 1001, true"})
  void emphasisesSulphitesOnlyAboveTheLimit(String percent, int dose, boolean isEmphasised) {
    String text = list(Market.EU, """
        ingredient sour-apricot
          contains 30 %% water, 70 %% glucose
          allergen sulphite at %d ppm
          gluten no
          label "dried apricots"
        formula f "Base"
          percent of charge
        stage pan
          %s %% sour-apricot
          q.s. white-sugar
          mix
        """.formatted(dose, percent)).text();
    assertEquals(isEmphasised, text.contains("SULPHITE"), text);
    assertTrue(text.contains("dried apricots") || text.contains("APRICOTS"), text);
  }

  /** Almonds and honey are in the name, the sugar is not. */
  @Test
  void statesTheQuantityOfWhatTheNameSpeaksOf() {
    assertEquals(
        "Sugar, roasted ALMONDS (30 %), honey (20 %).",
        list(Market.EU, formula("Honey nougat with almonds", """
              50 % white-sugar
              30 % roasted-almond
              20 % honey
            """)).text());
  }

  @Test
  void statesNoQuantityOfALittleFlavour() {
    assertEquals(
        "Sugar, vanilla extract.",
        list(Market.EU, formula("Vanilla base", "  99 % white-sugar\n  1 % vanilla-extract\n"))
            .text());
  }

  @Test
  void setsAllergensOffAndAddsWhatTheLabelDoesNotName() {
    assertEquals(
        "Crisp powder (EGGS, MILK), cream (MILK).",
        list(Market.EU, """
            ingredient house-powder
              contains 100 % protein
              allergen egg, milk
              suits vegetarian
              label "crisp powder"
            """ + formula("Base", "  60 % house-powder\n  40 % cream-35\n"))
            .text());
  }

  @Test
  void setsAllergensOffInANameOfAnyLetters() {
    assertEquals(
        "İncir and MILK paste.",
        list(Market.EU, """
            ingredient fig-paste
              contains 100 % sucrose
              allergen milk
              suits vegetarian
              label "İncir and Milk paste"
            """ + formula("Base", "  100 % fig-paste\n")).text());
  }

  /** 21 CFR 101.4(a)(2): 2 % and less may stand behind a clause of their own. */
  @Test
  void gathersSmallAmountsInTheUnitedStates() {
    IngredientList list = list(Market.US, formula("Base", """
          93 % white-sugar
           4 % roasted-almond
           2 % soy-lecithin
           1 % sea-salt
        """));
    assertEquals(
        "Sugar, roasted ALMONDS; contains 2 % or less of: emulsifier (SOYA lecithin), sea salt.",
        list.text());
    assertEquals("Contains: almond, soybeans.", list.contains().orElseThrow());
  }

  @Test
  void hasNoContainsStatementInTheUnion() {
    assertTrue(list(Market.EU, formula("Base", "  100 % almond\n")).contains().isEmpty());
  }

  @Test
  void putsWhatIsNotWeighedLast() {
    IngredientList list = list(
        Market.EU,
        "formula f\n  percent of charge\nstage pan\n"
            + "  60 % white-sugar\n  40 % honey\n  mix\n  deposit between wafer-sheet\n");
    assertEquals(
        "Sugar, honey, wafer (WHEAT flour, vegetable oil, salt, emulsifier: SOYA lecithin).",
        list.text());
    assertTrue(list.notes().stream()
        .anyMatch(note -> note.endsWith("is unknown: no line weighs in `wafer-sheet`")));
  }

  @Test
  void saysWhereALabelIsMissing() {
    IngredientList list = list(
        Market.EU,
        "ingredient moon-dust \"Moon dust\"\n  contains 100 % sucrose\n"
            + formula("Base", "  100 % moon-dust\n"));
    assertEquals("Moon dust.", list.text());
    assertTrue(list.notes().contains("`moon-dust` has no `label`; its name stands in for it"));
  }
}
