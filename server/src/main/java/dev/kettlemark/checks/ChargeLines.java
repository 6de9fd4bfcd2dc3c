package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.hipparchus.fraction.BigFraction;

/**
 * The lines of a formula that are percentages of the charge: those whose figure a fix may change
 * without touching a ratio.
 *
 * <p>What a variant takes over from its parent is left out, since it is not written there.
 */
final class ChargeLines {

  /** Formulas are written in hundredths of a percent; common practice, no source. */
  private static final int USUAL_DECIMALS = 2;

  private static final Comparator<Amounts.LineAmount> BY_SHARE =
      Comparator.comparing(line -> line.share().orElse(BigFraction.ZERO));

  private final List<Amounts.LineAmount> lines;

  private ChargeLines(List<Amounts.LineAmount> lines) {
    this.lines = lines;
  }

  static ChargeLines of(ComputedFormula computed) {
    return new ChargeLines(computed.amounts().lines().stream()
        .filter(line -> !computed.formula().inherits(line.line().span()))
        .filter(line -> isOfCharge(computed, line.line()))
        .filter(line -> line.share().isKnown())
        .toList());
  }

  static boolean isOfCharge(ComputedFormula computed, AmountLine line) {
    return line.measure().value() instanceof Measure.Share share
        && computed.formula().basisOf(share) instanceof Basis.Charge;
  }

  List<Amounts.LineAmount> all() {
    return lines;
  }

  Optional<Amounts.LineAmount> largest() {
    return largest(line -> true);
  }

  Optional<Amounts.LineAmount> largest(Predicate<Amounts.LineAmount> which) {
    return lines.stream().filter(which).max(BY_SHARE);
  }

  /** A share in the unit and with the decimals of a line, hundredths of a percent at the least. */
  static BigFraction rounded(AmountLine line, BigFraction share) {
    Unit unit = unit(line);
    return fraction(Display.fixed(share.divide(unit.factor()), decimals(line)))
        .multiply(unit.factor());
  }

  /** Writes another figure on a line and leaves its unit and basis. */
  static TextEdit rewritten(String text, AmountLine line, BigFraction share) {
    return rewritten(text, line, share, decimals(line));
  }

  /** The same with so many decimals. */
  static TextEdit rewritten(String text, AmountLine line, BigFraction share, int decimals) {
    int start = line.measure().span().start();
    int end = start;
    while (end < line.measure().span().end() && isFigure(text.charAt(end))) {
      end++;
    }
    return new TextEdit(
        new Span(start, end), Display.fixed(share.divide(unit(line).factor()), decimals));
  }

  private static BigFraction fraction(String decimal) {
    BigDecimal value = new BigDecimal(decimal);
    return new BigFraction(value.unscaledValue())
        .divide(new BigFraction(BigInteger.TEN.pow(Math.max(0, value.scale()))));
  }

  private static Unit unit(AmountLine line) {
    return line.written().flatMap(Quantity::unit).orElse(Unit.PERCENT);
  }

  private static int decimals(AmountLine line) {
    int written = line.written().map(Quantity::decimals).orElse(USUAL_DECIMALS);
    return unit(line) == Unit.PERCENT ? Math.max(USUAL_DECIMALS, written) : written;
  }

  private static boolean isFigure(char c) {
    return Character.isDigit(c) || c == '.' || c == '/' || c == '-' || c == '−';
  }
}
