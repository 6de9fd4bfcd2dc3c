package dev.kettlemark.analysis;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.SampleTexts;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.science.AeratedProduct;
import dev.kettlemark.science.UsualMoisture;
import org.junit.jupiter.api.Test;

/**
 * The classical samples come out as their kind is published.
 *
 * <p>Moisture and water activity: Bussière and Serpelloni 1985; Ergun, Lietha and Hartel 2010; both from
 * memory. Densities: common practice, no source, but for nougat by Decker and Ziegler 2003.
 */
class ClassicalProductsTest {

  private static final Snapshot LIBRARY = Snapshot.of(Library.of(SampleTexts.libraryWithPantry()));

  @Test
  void nougat() {
    checkMoisture("egg-honey-nougat", UsualMoisture.NOUGAT);
    checkActivity("egg-honey-nougat", UsualMoisture.NOUGAT);
    checkDensity("egg-honey-nougat", AeratedProduct.NOUGAT_WHIPPED.density());
  }

  @Test
  void marshmallow() {
    checkMoisture("gelatine-marshmallow", UsualMoisture.MARSHMALLOW);
    checkActivity("gelatine-marshmallow", UsualMoisture.MARSHMALLOW);
    checkDensity("gelatine-marshmallow", AeratedProduct.MARSHMALLOW_DEPOSITED.density());
  }

  @Test
  void italianMeringue() {
    checkDensity("italian-meringue", AeratedProduct.MERINGUE_WET.density());
  }

  @Test
  void caramel() {
    checkMoisture("chewy-caramel", UsualMoisture.CARAMEL);
    checkActivity("chewy-caramel", UsualMoisture.CARAMEL);
    checkDensity("chewy-caramel", grams(1.30, 1.40));
  }

  @Test
  void jelly() {
    checkMoisture("raspberry-jelly", UsualMoisture.JELLY);
    checkActivity("raspberry-jelly", UsualMoisture.JELLY);
  }

  /** Grained as it is, its water activity is that of the liquor around the crystals; unbeaten, it is a little dense. */
  @Test
  void fondant() {
    checkMoisture("white-fondant", UsualMoisture.FONDANT);
    Band<Ratio> grained =
        figures("white-fondant").grainedWaterActivity().toOptional().orElseThrow();
    assertTrue(grained.overlaps(UsualMoisture.FONDANT.activity()), grained.toString());
    checkDensity("white-fondant", grams(1.38, 1.45 * 1.02));
  }

  @Test
  void brittle() {
    checkMoisture("peanut-brittle", UsualMoisture.HARD_CANDY);
    checkActivity("peanut-brittle", UsualMoisture.HARD_CANDY);
  }

  private static void checkMoisture(String formula, UsualMoisture usual) {
    Band<Ratio> moisture = figures(formula).moisture().toOptional().orElseThrow();
    assertTrue(
        usual.water().contains(moisture.low().plus(moisture.high()).times(0.5)),
        formula + " " + moisture);
  }

  private static void checkActivity(String formula, UsualMoisture usual) {
    Band<Ratio> activity = figures(formula).waterActivity().toOptional().orElseThrow();
    assertTrue(usual.activity().overlaps(activity), formula + " " + activity);
  }

  private static void checkDensity(String formula, Band<Density> usual) {
    Band<Density> density = figures(formula).density().toOptional().orElseThrow();
    double middle = (density.low().gramsPerMillilitre() + density.high().gramsPerMillilitre()) / 2;
    assertTrue(usual.contains(Density.ofGramsPerMillilitre(middle)), formula + " " + density);
  }

  private static Band<Density> grams(double low, double high) {
    return new Band<>(Density.ofGramsPerMillilitre(low), Density.ofGramsPerMillilitre(high));
  }

  private static MassFigures figures(String formula) {
    ComputedFormula computed = Formulas.computed(formula).ask(LIBRARY).orElseThrow();
    return MassFigures.of(computed).toOptional().orElseThrow();
  }
}
