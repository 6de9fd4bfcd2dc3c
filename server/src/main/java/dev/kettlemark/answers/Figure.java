package dev.kettlemark.answers;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * An amount as a line of a formula can say it.
 *
 * @param text the number, in the unit
 * @param unit the unit that the line is written in
 * @param measure the same for a computation
 * @param share what it is of the charge, exact, as long as the charge stays the same
 */
public record Figure(String text, Unit unit, Measure measure, BigFraction share) {

  /** Formulas are written in hundredths of a percent; common practice, no source. */
  private static final int PERCENT_DECIMALS = 2;

  /** Below this many percent a third decimal is written. */
  private static final double SMALL_PERCENT = 0.1;

  private static final int MOST_DECIMALS = 9;

  /** The figure with its unit, such as {@code 1.68 %}. */
  public String shown() {
    return text + " " + unit.symbol();
  }

  /**
   * Whether a line's amount is its own: a share of the charge, or a weight.
   *
   * <p>A share of something else moves with what it is of, and cannot be set by itself.
   */
  static boolean isFree(ComputedFormula formula, LineAmount amount) {
    Measure measure = amount.line().measure().value();
    boolean known =
        amount.share().toOptional().filter(share -> share.signum() > 0).isPresent();
    boolean ofCharge = measure instanceof Measure.Share share
        && formula.formula().basisOf(share) instanceof Basis.Charge;
    return known
        && unit(amount.line()).isPresent()
        && (ofCharge || measure instanceof Measure.Weight);
  }

  /** A free line's figure for another share of the charge, rounded as its line is written. */
  static Figure rounded(LineAmount amount, BigFraction share) {
    BigFraction value = value(amount, share);
    return of(amount, Display.fixed(value, decimals(amount.line(), value.doubleValue())));
  }

  /** A free line's figure for another share of the charge, with all its decimals. */
  static Figure exact(LineAmount amount, BigFraction share) {
    BigFraction value = value(amount, share);
    int decimals = decimals(amount.line(), value.doubleValue());
    while (decimals < MOST_DECIMALS && !parsed(Display.fixed(value, decimals)).equals(value)) {
      decimals++;
    }
    return of(amount, Display.fixed(value, decimals));
  }

  /** A share of the charge as a new line says it. */
  static Figure ofCharge(BigFraction share) {
    BigFraction percent = share.multiply(100);
    String text = Display.fixed(
        percent, percent.doubleValue() < SMALL_PERCENT ? PERCENT_DECIMALS + 1 : PERCENT_DECIMALS);
    BigFraction fraction = parsed(text).divide(100);
    return new Figure(
        text, Unit.PERCENT, new Measure.Share(fraction, Optional.of(new Basis.Charge())), fraction);
  }

  /** A share of the charge as a new line says it in grams. */
  static Figure inGrams(BigFraction share, BigFraction charge) {
    String text = Display.fixed(share.multiply(charge), 1);
    BigFraction grams = parsed(text);
    return new Figure(text, Unit.GRAM, new Measure.Weight(grams), grams.divide(charge));
  }

  private static Figure of(LineAmount amount, String text) {
    Unit unit = unit(amount.line()).orElse(Unit.PERCENT);
    BigFraction value = parsed(text);
    BigFraction base = value.multiply(unit.factor());
    Measure measure = amount.line().measure().value() instanceof Measure.Share share
        ? new Measure.Share(base, share.basis())
        : new Measure.Weight(base);
    BigFraction share =
        amount.share().orElse(BigFraction.ZERO).multiply(base).divide(inBase(amount.line()));
    return new Figure(text, unit, measure, share);
  }

  private static BigFraction value(LineAmount amount, BigFraction share) {
    Unit unit = unit(amount.line()).orElse(Unit.PERCENT);
    return inBase(amount.line())
        .multiply(share)
        .divide(amount.share().orElse(BigFraction.ONE))
        .divide(unit.factor());
  }

  private static BigFraction inBase(AmountLine line) {
    Measure measure = line.measure().value();
    return measure instanceof Measure.Share share
        ? share.fraction()
        : measure instanceof Measure.Weight weight ? weight.grams() : BigFraction.ONE;
  }

  private static int decimals(AmountLine line, double value) {
    int written = line.written().map(Quantity::decimals).orElse(0);
    Unit unit = unit(line).orElse(Unit.PERCENT);
    if (unit == Unit.PERCENT) {
      return Math.max(written, value < SMALL_PERCENT ? PERCENT_DECIMALS + 1 : PERCENT_DECIMALS);
    }
    return Math.max(written, unit == Unit.GRAM || unit == Unit.MILLIGRAM ? 1 : 3);
  }

  private static Optional<Unit> unit(AmountLine line) {
    return line.written().flatMap(Quantity::unit);
  }

  private static BigFraction parsed(String decimal) {
    BigDecimal value = new BigDecimal(decimal);
    return new BigFraction(value.unscaledValue())
        .divide(new BigFraction(BigInteger.TEN.pow(Math.max(0, value.scale()))));
  }
}
