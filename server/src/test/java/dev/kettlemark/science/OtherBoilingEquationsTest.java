package dev.kettlemark.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Temperature;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What other equations say of boiling sucrose: one serves as second opinion, two must not be used for cooking. */
class OtherBoilingEquationsTest {

  @ParameterizedTest
  @CsvSource({
    "10,100.14", "30,100.69", "50,101.84", "60,102.99", "70,105.08", "75,106.84", "80,109.54",
    "85,113.97", "90,121.94", "90.8,123.8", "92,126.92", "94,133.42", "95,137.25", "96,141.30",
    "97,145.33"
  })
  void aLaterFitAgreesWithTheModel(double solids, double celsius) {
    // Starzak and Mathlouthi 2006, Food Chem. 96:346, constants from memory; the figures are
    // computed
    // apart.
    double later = boiling(solids, OtherBoilingEquationsTest::starzakMathlouthi);
    assertEquals(celsius, later, 0.06);
    double model = SyrupBoiling.boilingPoint(syrup(solids), Pressure.STANDARD_ATMOSPHERE)
        .map(Temperature::celsius)
        .orElse(Double.NaN);
    // Both are fits to the same measurements, which are few above 90 %.
    assertEquals(later, model, solids <= 90 ? 0.5 : 4.2);
  }

  @ParameterizedTest
  @CsvSource({
    "10,100.14,100.14",
    "50,101.42,101.88",
    "70,103.25,105.48",
    "80,105.42,111.18",
    "90,111.21,132.5",
    "95,120.63,180.8"
  })
  void idealAndNorrishDoNotServeForCooking(double solids, double raoult, double norrish) {
    double ideal = boiling(solids, (w, t) -> ActivityOpinions.idealActivity(syrup(w)));
    double older = boiling(solids, (w, t) -> ActivityOpinions.norrishActivity(syrup(w)));
    assertEquals(raoult, ideal, 0.02);
    assertEquals(norrish, older, 0.1);
    if (solids >= 90) {
      double model = SyrupBoiling.boilingPoint(syrup(solids), Pressure.STANDARD_ATMOSPHERE)
          .map(Temperature::celsius)
          .orElse(Double.NaN);
      assertTrue(ideal < model - 10 && older > model + 10);
    }
  }

  /** The lowest root above 100 °C, since the later fit has a second one above some 190 °C. */
  private static double boiling(double solids, DoubleBinaryOperator activity) {
    double atmosphere = Pressure.STANDARD_ATMOSPHERE.pascals();
    double celsius = 99.9;
    while (activity.applyAsDouble(solids, celsius + 273.15)
            * SaturationLine.pascals(celsius + 273.15)
        < atmosphere) {
      celsius += 0.001;
    }
    return celsius;
  }

  private static double starzakMathlouthi(double solids, double kelvin) {
    double moles = solids / 342.297;
    double x = moles / (moles + (100 - solids) / 18.01528);
    double theta = kelvin / 298.15;
    double a = -268.59 / theta
        - 861.42
        - 1102.3 * Math.log(theta)
        + 1399.9 * theta
        - 277.88 * theta * theta;
    return (1 - x) * Math.exp(a * x * x * (1 - 1.9831 * x + 0.92730 * x * x));
  }

  private static Composition syrup(double solids) {
    return ReferenceBlends.withWater(ReferenceBlends.SUCROSE, 100 - solids);
  }
}
