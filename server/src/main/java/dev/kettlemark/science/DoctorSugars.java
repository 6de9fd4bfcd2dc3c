package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;

/**
 * Weighs sucrose against the sugars that keep it from graining.
 *
 * <p>Equation: sucrose share = sucrose / all saccharides; doctor share = 1 − sucrose share.
 *
 * <p>Shape: any composition with saccharides; without them the answer is unknown.
 *
 * <p>Expected error: exact as a mass balance; the limits per product are common practice, no source.
 */
public final class DoctorSugars {

  /** Below this share of other saccharides a boiled sugar grains; common practice, no source. */
  public static final Ratio LEAST_DOCTOR_IN_HARD_CANDY = Ratio.ofPercent(25);

  /** Above this share of all solids glucose may grain as its hydrate; common practice, no source. */
  public static final Ratio MOST_GLUCOSE_IN_SOLIDS = Ratio.ofPercent(30);

  /** Above this share of the mass lactose may go sandy; common practice, no source. */
  public static final Ratio MOST_LACTOSE_IN_MASS = Ratio.ofPercent(8);

  private DoctorSugars() {}

  /** What is usual for a kind of confection: sucrose as a share of all saccharides; common practice, no source. */
  public enum Usual {
    HARD_CANDY(50, 70),
    CHEWY(0, 55),
    GRAINED(60, 75),
    FONDANT(80, 90);

    private final double lowPercent;
    private final double highPercent;

    Usual(double lowPercent, double highPercent) {
      this.lowPercent = lowPercent;
      this.highPercent = highPercent;
    }

    public Band<Ratio> sucroseShare() {
      return new Band<>(Ratio.ofPercent(lowPercent), Ratio.ofPercent(highPercent));
    }
  }

  /** Returns sucrose as a share of all saccharides. */
  public static Outcome<Ratio> sucroseShare(Composition composition) {
    Ratio all = composition.saccharides();
    return all.equals(Ratio.ZERO)
        ? Outcome.unknown(Reason.MISSING_COMPOSITION, "it holds no saccharides")
        : Outcome.known(Ratio.ofFraction(composition.fraction(Component.SUCROSE) / all.fraction()));
  }

  /** Returns everything but sucrose as a share of all saccharides. */
  public static Outcome<Ratio> doctorShare(Composition composition) {
    return sucroseShare(composition).map(Ratio::complement);
  }
}
