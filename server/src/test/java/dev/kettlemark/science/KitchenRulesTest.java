package dev.kettlemark.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Chance;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Portion;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Stages, gelatine, inversion, sweetness, egg and growth. */
class KitchenRulesTest {

  @Test
  void namesEveryStageThatHoldsATemperature() {
    assertEquals(List.of(SugarStage.FIRM_BALL), SugarStage.at(Temperature.ofCelsius(119)));
    assertEquals(
        List.of(SugarStage.THREAD, SugarStage.BLOW), SugarStage.at(Temperature.ofCelsius(111)));
    assertEquals(List.of(), SugarStage.at(Temperature.ofCelsius(117)), "a gap of the handbooks");
    assertEquals(SugarStage.HARD_BALL, SugarStage.ofWord("hard-ball").orElseThrow());
    assertTrue(SugarStage.ofWord("soft").isEmpty());
  }

  @ParameterizedTest
  @EnumSource(SugarStage.class)
  void printsBothScalesOfAStageAlike(SugarStage stage) {
    // Handbooks round each scale by itself; more than 2 °C apart would be a slip of the pen.
    assertEquals(
        stage.range().low().celsius(), stage.rangePrintedInFahrenheit().low().celsius(), 2);
    assertEquals(
        stage.range().high().celsius(), stage.rangePrintedInFahrenheit().high().celsius(), 2);
    assertFalse(stage.look().isBlank());
  }

  @Test
  void convertsGelatineByEitherRule() {
    Mass leaf = Mass.ofGrams(10);
    Bloom strong = new Bloom(250);
    Bloom weak = new Bloom(200);
    assertEquals(11.18, GelatineStrength.byRootRule(leaf, strong, weak).grams(), 0.005);
    assertEquals(12.5, GelatineStrength.byLinearRule(leaf, strong, weak).grams(), 1e-9);
    assertTrue(GelatineStrength.rulesDisagree(strong, weak));
    assertFalse(GelatineStrength.rulesDisagree(new Bloom(200), new Bloom(190)));
    Band<Mass> both = GelatineStrength.byBothRules(leaf, strong, weak);
    assertEquals(11.18, both.low().grams(), 0.005);
    assertEquals(
        210,
        GelatineStrength.mixed(Mass.ofGrams(1), strong, Mass.ofGrams(4), weak).grams(),
        1e-9);
    assertThrows(IllegalArgumentException.class, () -> new Bloom(20));
  }

  @Test
  void takesUpWaterToInvert() {
    // 100 g of sucrose with 5.263 g of water give 105.263 g of invert: stoichiometry.
    Portion syrup = new Portion(
        Mass.ofGrams(130),
        Composition.ofMasses(
            Map.of(Component.SUCROSE, Mass.ofGrams(100), Component.WATER, Mass.ofGrams(30))));
    Portion inverted = Inversion.of(syrup, Ratio.ONE).toOptional().orElseThrow();
    assertEquals(
        105.263,
        inverted
            .massOf(Component.GLUCOSE)
            .plus(inverted.massOf(Component.FRUCTOSE))
            .grams(),
        0.005);
    assertEquals(24.737, inverted.massOf(Component.WATER).grams(), 0.005);
    assertEquals(130, inverted.mass().grams(), 1e-9);
    Portion dry = new Portion(Mass.ofGrams(100), Composition.of(Component.SUCROSE));
    assertFalse(Inversion.of(dry, Ratio.ofPercent(10)).isKnown());
    assertFalse(Inversion.of(syrup, Ratio.ofPercent(110)).isKnown());
  }

  @Test
  void keepsMassOnRandomInversions() {
    Chance.rounds(100, random -> {
      Composition blend = RandomBlends.syrup(random).withWaterFraction(Ratio.ofPercent(25));
      Portion before = new Portion(Mass.ofGrams(250), blend);
      Portion after = Inversion.of(before, Ratio.ofFraction(random.nextDouble()))
          .toOptional()
          .orElseThrow();
      assertEquals(before.mass(), after.mass());
      assertEquals(
          before.massOf(Component.FAT).grams(), after.massOf(Component.FAT).grams(), 1e-9);
      double gained = after
              .massOf(Component.GLUCOSE)
              .minus(before.massOf(Component.GLUCOSE))
              .grams()
          * 2;
      double lost = before
          .massOf(Component.SUCROSE)
          .minus(after.massOf(Component.SUCROSE))
          .grams();
      assertEquals(lost * 1.05263, gained, 1e-2);
    });
  }

  @Test
  void invertsWithTartarAsTheTradeSays() {
    // Common practice, no source: 0.1 to 0.3 % gives some 5 to 15 %.
    assertTrue(Inversion.byCreamOfTartar(Ratio.ofPercent(0.1))
        .toOptional()
        .orElseThrow()
        .contains(Ratio.ofPercent(5)));
    assertTrue(Inversion.byCreamOfTartar(Ratio.ofPercent(0.3))
        .toOptional()
        .orElseThrow()
        .contains(Ratio.ofPercent(15)));
    assertFalse(Inversion.byCreamOfTartar(Ratio.ofPercent(2)).isKnown());
  }

  @Test
  void tastesAsSweetAsItsParts() {
    assertEquals(1, Sweetness.of(Composition.of(Component.SUCROSE)).fraction());
    // Published tables put invert at 1.0 to 1.3 and 42 DE syrup at 0.45 to 0.5 of its solids at
    // most.
    assertEquals(1.0, Sweetness.of(ReferenceBlends.INVERT).fraction(), 0.1);
    assertTrue(Sweetness.bandOf(ReferenceBlends.SYRUP_42).contains(Ratio.ofFraction(0.35)));
    assertTrue(Sweetness.bandOf(ReferenceBlends.HONEY).contains(Ratio.ofFraction(1.0)));
    for (Component component : Component.values()) {
      Composition pure = Composition.of(component);
      assertTrue(Sweetness.bandOf(pure).contains(Sweetness.of(pure)), component::word);
    }
  }

  @ParameterizedTest
  @CsvSource({"50,90,NOT_PASTEURISED", "60,75,DEPENDS_ON_HOLDING", "72,80,SAFE_AT_ONCE"})
  void judgesEggByTheColdEnd(double low, double high, EggSafety.Verdict verdict) {
    Band<Temperature> reached = new Band<>(Temperature.ofCelsius(low), Temperature.ofCelsius(high));
    assertEquals(verdict, EggSafety.ofWhite(reached));
  }

  @ParameterizedTest
  @CsvSource({"134,56.7", "132,55.6", "140,60.0", "130,54.4", "160,71.1"})
  void printsTheLawsTemperaturesInCelsius(double fahrenheit, double celsius) {
    // 9 CFR 590.570 and 590.575 print both scales.
    List<Temperature> limits = List.of(
        EggSafety.ALBUMEN_HELD_3_5_MINUTES,
        EggSafety.ALBUMEN_HELD_6_2_MINUTES,
        EggSafety.WHOLE_EGG_HELD_3_5_MINUTES,
        EggSafety.DRIED_WHITE_HELD_7_DAYS,
        EggSafety.SAFE_AT_ONCE);
    Temperature limit = limits.stream()
        .filter(one -> Math.abs(one.fahrenheit() - fahrenheit) < 1e-9)
        .findFirst()
        .orElseThrow();
    assertEquals(celsius, limit.celsius(), 0.06);
  }

  @Test
  void tellsWhoGrows() {
    assertEquals(List.of(), GrowthLimit.growingAt(Ratio.ofFraction(0.59)));
    assertEquals(
        List.of(GrowthLimit.DRY_MOULDS, GrowthLimit.OSMOPHILIC_YEASTS),
        GrowthLimit.growingAt(Ratio.ofFraction(0.70)));
    assertEquals(
        GrowthLimit.values().length,
        GrowthLimit.growingAt(Ratio.ofFraction(0.95)).size());
  }

  @ParameterizedTest
  @EnumSource(AeratedProduct.class)
  void isLighterThanItsSyrup(AeratedProduct product) {
    assertTrue(product.density().high().gramsPerMillilitre() < 1.45);
  }
}
