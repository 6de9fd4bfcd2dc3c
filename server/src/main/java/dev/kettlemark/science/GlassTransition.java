package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;

/**
 * Gives the temperature below which a sugar mass is a glass.
 *
 * <p>Equations: dry blend (Fox) 1/Tg₁ = Σ sᵢ/Tgᵢ; with water (Gordon and Taylor) Tg = (w₁·Tg₁ + k·w₂·Tg₂)/(w₁ + k·w₂).
 *
 * <p>Symbols: Tg in K; sᵢ share of the dry saccharides and polyols; w₁ their share, w₂ that of water, in both together;
 * Tg₂ = 138 K; k a number, either the mean of tabulated values or Roos's rule k = 0.0293·Tg₁(°C) + 3.61.
 *
 * <p>Shape: any composition with saccharides or polyols; protein, fat and air do not take part. The two values of k
 * give the ends of the band.
 *
 * <p>Range: all water contents; unknown without saccharides or polyols.
 *
 * <p>Expected error: ±5 °C beyond the band.
 *
 * <p>Source: [1] M. Gordon and J. S. Taylor (1952), J. Appl. Chem. 2, 493. [2] T. G. Fox (1956), Bull. Am. Phys. Soc. 1,
 * 123. [3] Y. H. Roos (1993), Carbohydr. Res. 238, 39; Y. H. Roos and M. Karel (1991), J. Food Sci. 56, 1676. Constants
 * mostly from memory.
 */
public final class GlassTransition {

  /** Names the relation in a derivation. */
  public static final Equation EQUATION = new Equation(
      "glass transition of the sugar phase",
      "1/Tg1 = Σ s/Tg, Tg = (w1·Tg1 + k·w2·138 K)/(w1 + k·w2)",
      "Gordon and Taylor 1952 with constants of Roos 1993, from memory",
      Confidence.MODEL);

  /** Names the dry blend in a derivation. */
  public static final Equation DRY_EQUATION = new Equation(
      "glass transition of the dry sugars",
      "1/Tg1 = Σ s/Tg",
      "Fox 1956 with constants of Roos 1993, from memory",
      Confidence.MODEL);

  private static final double WATER_KELVIN = 138;
  private static final double ROOS_SLOPE = 0.0293;
  private static final double ROOS_INTERCEPT = 3.61;

  private GlassTransition() {}

  /** Returns the glass transition of a composition, as the band between both values of k. */
  public static Outcome<Band<Temperature>> of(Composition composition) {
    double sweet = composition.sweetSolids().fraction();
    double water = composition.water().fraction();
    return dry(composition).map(blend -> {
      double w2 = water / (sweet + water);
      return Band.spanning(
          gordonTaylor(blend.kelvin(), blend.ruleK(), w2),
          gordonTaylor(blend.kelvin(), blend.tabulatedK(), w2));
    });
  }

  /**
   * Returns the share of water in the sugar phase at which it turns to glass at the given temperature, as a band.
   *
   * @param composition its own water is ignored
   */
  public static Outcome<Band<Ratio>> waterFor(Composition composition, Temperature temperature) {
    return dry(composition)
        .flatMap(blend ->
            blend.kelvin() < temperature.kelvin() || temperature.kelvin() <= WATER_KELVIN
                ? Outcome.unknown(
                    Reason.NO_SOLUTION,
                    "not even the dry blend is a glass at %.0f °C",
                    temperature.celsius())
                : Outcome.known(Band.spanning(
                    waterAt(blend.kelvin(), blend.ruleK(), temperature.kelvin()),
                    waterAt(blend.kelvin(), blend.tabulatedK(), temperature.kelvin()))));
  }

  private static Temperature gordonTaylor(double dryKelvin, double k, double water) {
    return Temperature.ofKelvin(
        ((1 - water) * dryKelvin + k * water * WATER_KELVIN) / (1 - water + k * water));
  }

  private static Ratio waterAt(double dryKelvin, double k, double kelvin) {
    double above = dryKelvin - kelvin;
    return Ratio.ofFraction(above / (above + k * (kelvin - WATER_KELVIN)));
  }

  private static Outcome<DryBlend> dry(Composition composition) {
    double sweet = composition.sweetSolids().fraction();
    if (sweet == 0) {
      return Outcome.unknown(Reason.MISSING_COMPOSITION, "it holds no saccharides or polyols");
    }
    StarchSyrupPart syrup = StarchSyrupPart.of(composition);
    double inverse =
        composition.weighted(component -> share(component) / GlassConstants.dryKelvin(component))
            - syrup.glucose() / GlassConstants.dryKelvin(Component.GLUCOSE)
            - syrup.maltose() / GlassConstants.dryKelvin(Component.MALTOSE);
    double k = composition.weighted(component -> share(component) * GlassConstants.k(component))
        - syrup.glucose() * GlassConstants.k(Component.GLUCOSE)
        - syrup.maltose() * GlassConstants.k(Component.MALTOSE);
    if (syrup.total() > 0) {
      double syrupKelvin = GlassConstants.ofDextroseEquivalent(syrup.dextroseEquivalent());
      inverse += syrup.total() / syrupKelvin;
      k += syrup.total() * roosK(syrupKelvin);
    }
    double kelvin = sweet / inverse;
    return Outcome.known(new DryBlend(kelvin, k / sweet, roosK(kelvin)));
  }

  /** What takes part by itself; saccharides of three and more units come in with the syrup they belong to. */
  private static double share(Component component) {
    return switch (component.family()) {
      case SUGAR, POLYOL -> 1;
      default -> 0;
    };
  }

  private static double roosK(double kelvin) {
    return ROOS_SLOPE * Temperature.ofKelvin(kelvin).celsius() + ROOS_INTERCEPT;
  }

  /** The dry blend: its glass transition in K and both values of k. */
  private record DryBlend(double kelvin, double tabulatedK, double ruleK) {}
}
