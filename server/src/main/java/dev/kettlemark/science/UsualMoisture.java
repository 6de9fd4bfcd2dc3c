package dev.kettlemark.science;

import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Ratio;

/**
 * How moist the trade's products usually are, and the water activity that goes with it.
 *
 * <p>Source: P. J. Bussière and M. Serpelloni (1985) and R. Ergun, R. Lietha and R. W. Hartel (2010), Crit. Rev. Food
 * Sci. Nutr. 50, 162; both from memory.
 */
public enum UsualMoisture {
  HARD_CANDY(1, 5, 0.20, 0.40),
  CARAMEL(6, 18, 0.45, 0.70),
  NOUGAT(5, 10, 0.40, 0.65),
  JELLY(8, 22, 0.50, 0.75),
  MARSHMALLOW(12, 20, 0.60, 0.75),
  FONDANT(10, 18, 0.65, 0.80),
  MARZIPAN(15, 18, 0.75, 0.80),
  CHEWING_GUM(3, 6, 0.40, 0.65),
  CHOCOLATE(0.5, 1.5, 0.30, 0.50),
  WAFER(2, 4, 0.10, 0.30),
  ROASTED_NUTS(1.5, 3, 0.20, 0.40),
  MERINGUE_DRIED(1, 3, 0.10, 0.30);

  private final double leastPercent;
  private final double mostPercent;
  private final double leastActivity;
  private final double mostActivity;

  UsualMoisture(
      double leastPercent, double mostPercent, double leastActivity, double mostActivity) {
    this.leastPercent = leastPercent;
    this.mostPercent = mostPercent;
    this.leastActivity = leastActivity;
    this.mostActivity = mostActivity;
  }

  /** Returns the usual share of water. */
  public Band<Ratio> water() {
    return new Band<>(Ratio.ofPercent(leastPercent), Ratio.ofPercent(mostPercent));
  }

  /** Returns the usual water activity. */
  public Band<Ratio> activity() {
    return new Band<>(Ratio.ofFraction(leastActivity), Ratio.ofFraction(mostActivity));
  }
}
