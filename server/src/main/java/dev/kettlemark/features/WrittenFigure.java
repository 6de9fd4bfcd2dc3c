package dev.kettlemark.features;

import dev.kettlemark.quantity.Display;
import java.math.BigDecimal;
import java.math.BigInteger;
import org.hipparchus.fraction.BigFraction;

/**
 * A figure as a line can say it: with as few decimals as keep its value.
 *
 * @param text the number
 * @param value what the number means, exact
 */
record WrittenFigure(String text, BigFraction value) {

  private static final int MOST_DECIMALS = 15;

  /**
   * The shortest figure that is close enough.
   *
   * @param least decimals that are written in any case
   * @param slack how far the figure may lie off
   */
  static WrittenFigure of(BigFraction exact, int least, BigFraction slack) {
    WrittenFigure figure = fixed(exact, least);
    for (int decimals = least + 1;
        decimals <= MOST_DECIMALS && figure.isOff(exact, slack);
        decimals++) {
      figure = fixed(exact, decimals);
    }
    return figure;
  }

  /** What a model's figure means as it would be printed, exact. */
  static BigFraction exact(double value) {
    BigDecimal decimal = BigDecimal.valueOf(value);
    return new BigFraction(decimal.unscaledValue())
        .divide(new BigFraction(BigInteger.TEN.pow(Math.max(0, decimal.scale()))))
        .multiply(new BigFraction(BigInteger.TEN.pow(Math.max(0, -decimal.scale()))));
  }

  /** A figure with so many decimals. */
  static WrittenFigure fixed(BigFraction exact, int decimals) {
    String text = Display.fixed(exact, decimals);
    BigDecimal value = new BigDecimal(text);
    return new WrittenFigure(
        text,
        new BigFraction(value.unscaledValue())
            .divide(new BigFraction(BigInteger.TEN.pow(Math.max(0, value.scale())))));
  }

  /** What is not nothing must not be written as nothing. */
  private boolean isOff(BigFraction exact, BigFraction slack) {
    return exact.subtract(value).abs().compareTo(slack) > 0
        || (value.signum() == 0 && exact.signum() != 0);
  }
}
