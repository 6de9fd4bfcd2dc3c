package dev.kettlemark.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.Texture;
import org.junit.jupiter.api.Test;

/** The figures of a mass against published figures. */
class MassFiguresTest {

  @Test
  void aSaturatedSyrupIsSaturated() {
    // Vavrinecz 1962 and Charles 1960, from memory: 66.6–66.7 % sucrose at 20 °C; water activity of
    // the
    // saturated solution 0.843–0.86 at 25 °C, from memory.
    MassFigures syrup = figures("66.65 % sucrose", "33.35 % water");
    assertEquals(1.0, middle(syrup.supersaturation()), 0.01);
    assertEquals(2.0, middle(syrup.sucrosePerWater()), 0.01);
    Band<Ratio> activity = syrup.waterActivity().toOptional().orElseThrow();
    assertTrue(activity.low().fraction() < 0.843 && activity.high().fraction() > 0.86);
    assertEquals(0, syrup.doctorShare().toOptional().orElseThrow().fraction(), 1e-12);
  }

  @Test
  void theGlassTransitionIsThatOfThePublishedTables() {
    // Roos 1993, from memory: dry sucrose 62 °C; with 3 % water 37 °C by k = 4.7.
    MassFigures candy = figures("97 % sucrose", "3 % water");
    assertEquals(62, candy.dryGlassTransition().toOptional().orElseThrow().celsius(), 0.1);
    Band<Temperature> wet = candy.glassTransition().toOptional().orElseThrow();
    assertEquals(37.0, wet.high().celsius(), 0.1);
    assertEquals(Band.of(Texture.GLASSY), candy.texture().toOptional().orElseThrow());
  }

  @Test
  void tellsWaterActivityBeforeAndAfterGraining() {
    // Fondant of 12 % water: usual water activity 0.65–0.80 (Ergun, Lietha and Hartel 2010, from
    // memory),
    // which only the mother liquor around its crystals explains.
    MassFigures fondant = figures("77 % sucrose", "11 % dried-glucose-syrup-38", "12 % water");
    Band<Ratio> clear = fondant.waterActivity().toOptional().orElseThrow();
    Band<Ratio> grained = fondant.grainedWaterActivity().toOptional().orElseThrow();
    assertTrue(clear.high().fraction() < 0.60, clear.toString());
    assertTrue(grained.low().fraction() > 0.74, grained.toString());
  }

  @Test
  void sweetnessAndEnergyFollowTheParts() {
    // Regulation (EU) No 1169/2011, annex XIV: 4 kcal and 17 kJ a gram of sugar.
    MassFigures syrup = figures("50 % sucrose", "50 % water");
    assertEquals(200, syrup.europeanKilocalories().toOptional().orElseThrow(), 1e-6);
    assertEquals(850, syrup.europeanKilojoules().toOptional().orElseThrow(), 1e-6);
    assertEquals(0.5, middle(syrup.sweetness()), 1e-9);
  }

  @Test
  void densityAndVolumeAgree() {
    // NBS Circular 440, from memory: 50 % sucrose has 1.2296 g/mL at 20 °C.
    MassFigures syrup = figures("50 % sucrose", "50 % water");
    assertEquals(
        1.2296, syrup.density().toOptional().orElseThrow().low().gramsPerMillilitre(), 0.0005);
    assertEquals(1000 / 1.2296, syrup.volume().toOptional().orElseThrow().low().millilitres(), 0.5);
    assertEquals(0, middle(syrup.overrun()), 1e-12);
  }

  @Test
  void whatNobodyDescribedIsUnknownWithItsReason() {
    MassFigures figures = figures("50 % moon-dust", "50 % water");
    for (Figure figure : Figure.values()) {
      Outcome<?> told = FigureDerivations.of(figures, figure);
      assertFalse(told.isKnown(), figure.toString());
      assertTrue(
          told.fold(known -> "", Outcome.Unknown::because).contains("moon-dust"),
          figure.toString());
    }
  }

  @Test
  void everyFigureHasItsOwnWord() {
    for (Figure figure : Figure.values()) {
      assertEquals(figure, Figure.ofWord(figure.word()).orElseThrow());
    }
  }

  private static MassFigures figures(String... lines) {
    String text =
        "ingredient sucrose\n  contains 100 % sucrose\nformula f\n  batch 1000 g\nstage pan\n  "
            + String.join("\n  ", lines) + "\n  mix\n";
    ComputedFormula formula = Bench.formula(text);
    return MassFigures.of(formula).toOptional().orElseThrow();
  }

  private static double middle(Outcome<Band<Ratio>> outcome) {
    Band<Ratio> band = outcome.toOptional().orElseThrow();
    return (band.low().fraction() + band.high().fraction()) / 2;
  }
}
