package dev.kettlemark.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Volume;
import org.junit.jupiter.api.Test;

/** How much air a mass holds through its steps. */
class AirTest {

  private static final String FOAM = """
      formula f
        batch 1000 g
      stage foam
        20 % egg-white-pasteurised
        whip until stiff-peak
      """;

  @Test
  void whippingGivesAMassItsUsualDensity() {
    // Egg white foam of 0.10–0.17 g/mL: common practice, no source.
    Band<Density> foam = density(FOAM, "foam");
    assertEquals(0.10, foam.low().gramsPerMillilitre(), 1e-9);
    assertEquals(0.17, foam.high().gramsPerMillilitre(), 1e-9);
  }

  @Test
  void foldingInAddsVolumesAndPressesAirOut() {
    String text = FOAM + """
        stage body
          80 % roasted-almond
          all of foam
          fold roasted-almond
        """;
    StageParcel foam = Bench.left(text, "foam");
    StageParcel body = Bench.left(text, "body");
    Band<Volume> before = foam.air().toOptional().orElseThrow();
    Band<Volume> after = body.air().toOptional().orElseThrow();
    // So much is folded in that the whole usual loss counts: 60 to 90 % of the gas stays.
    assertEquals(0.6 * before.low().millilitres(), after.low().millilitres(), 1e-6);
    assertEquals(0.9 * before.high().millilitres(), after.high().millilitres(), 1e-6);
  }

  @Test
  void aPinchFoldedInTakesNextToNothing() {
    String text = FOAM + """
        stage body
          0.1 % sea-salt
          all of foam
          fold sea-salt
        """;
    double before =
        Bench.left(text, "foam").air().toOptional().orElseThrow().low().litres();
    double after =
        Bench.left(text, "body").air().toOptional().orElseThrow().low().litres();
    assertTrue(after < before && after > 0.99 * before, before + " to " + after);
  }

  @Test
  void aDensityThatIsCheckedForIsTheDensityItIsBroughtTo() {
    Band<Density> foam = density(FOAM + "  check density 0.13 g/mL +- 0.01\n", "foam");
    assertEquals(0.12, foam.low().gramsPerMillilitre(), 1e-9);
    assertEquals(0.14, foam.high().gramsPerMillilitre(), 1e-9);
  }

  @Test
  void boilingDrivesTheAirOut() {
    Band<Density> boiled = density(FOAM + "  boil under lid for 1 min\n", "foam");
    assertTrue(boiled.isExact());
    assertTrue(boiled.low().gramsPerMillilitre() > 1);
  }

  @Test
  void saysThatASyrupHoldsNoAir() {
    StageParcel whipped = Bench.left("""
        formula f
          batch 100 g
        stage pan
          70 % white-sugar
          30 % water
          whip until foam
        """, "pan");
    assertFalse(whipped.air().isKnown());
  }

  @Test
  void whatAnotherFormulaMakesComesWithItsAir() {
    String text = """
        formula bar
          batch 100 g
        stage body
          50 % frappe
          50 % honey at 21 °C
          fold honey into frappe
        formula frappe
          batch 1000 g
        stage foam
           2 % egg-white-powder
          10 % water
          88 % glucose-syrup-42
          whip until firm-peak
        """;
    Band<Volume> air = Bench.left(text, "body").air().toOptional().orElseThrow();
    assertTrue(air.low().millilitres() > 10, air.toString());
  }

  private static Band<Density> density(String text, String stage) {
    return MassFigures.of(Bench.left(text, stage), Bench.formula(text).kitchen())
        .density()
        .toOptional()
        .orElseThrow();
  }
}
