package dev.kettlemark.science;

import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;

/**
 * Relates the DE of a glucose syrup to its mean molar mass and its dry glass transition.
 *
 * <p>Equations: Mn = 18016/DE; mean chain n = (Mn − 18)/162.
 *
 * <p>Symbols: DE grams of reducing sugar, as glucose, per 100 g of dry solids; Mn mean molar mass in g/mol; n glucose
 * units.
 *
 * <p>Range: DE 5–100; outside it the answer is unknown.
 *
 * <p>Expected error: 1 % by definition; the glass transition ±10 °C.
 *
 * <p>Source: [1] definition of DE. [2] The constants named in {@link GlassTransition}, from memory.
 */
public final class DextroseEquivalent {

  /** Names the relation in a derivation. */
  public static final Equation EQUATION = new Equation(
      "mean molar mass of a syrup", "Mn = 18016/DE", "definition of DE", Confidence.EXACT);

  private static final Band<Double> RANGE = new Band<>(5.0, 100.0);
  private static final double GRAMS_PER_MOLE = 18016;
  private static final double WATER = 18;
  private static final double GLUCOSE_UNIT = 162;

  private DextroseEquivalent() {}

  /** Returns the mean molar mass of the solids in g/mol. */
  public static Outcome<Double> meanMolarMass(double equivalent) {
    return inRange(equivalent).map(de -> GRAMS_PER_MOLE / de);
  }

  /** Returns the mean number of glucose units. */
  public static Outcome<Double> meanChain(double equivalent) {
    return meanMolarMass(equivalent).map(mass -> (mass - WATER) / GLUCOSE_UNIT);
  }

  /** Returns the glass transition of the dry syrup. */
  public static Outcome<Temperature> glassTransition(double equivalent) {
    return inRange(equivalent)
        .map(de -> Temperature.ofKelvin(GlassConstants.ofDextroseEquivalent(de)));
  }

  /** Returns the DE of the part of a composition that came from starch; unknown if it has no longer saccharides. */
  public static Outcome<Double> of(Composition composition) {
    StarchSyrupPart part = StarchSyrupPart.of(composition);
    return part.total() > 0
        ? Outcome.known(part.dextroseEquivalent())
        : Outcome.unknown(
            Reason.MISSING_COMPOSITION, "it holds no saccharides of three and more units");
  }

  private static Outcome<Double> inRange(double equivalent) {
    return RANGE.contains(equivalent)
        ? Outcome.known(equivalent)
        : Outcome.unknown(Reason.OUTSIDE_VALID_RANGE, "DE %.0f lies outside 5 to 100", equivalent);
  }
}
