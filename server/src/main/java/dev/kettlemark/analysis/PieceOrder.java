package dev.kettlemark.analysis;

import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.text.Span;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * What a formula is to yield: {@code makes 37 pieces of 42 g with 4 % loss}.
 *
 * @param pieces how many; above 0
 * @param gramsEach what one weighs; above 0
 * @param loss the share of the finished mass that stays in bowls and trimmings, from 0 to below 1
 * @param span the whole line
 */
public record PieceOrder(BigFraction pieces, BigFraction gramsEach, BigFraction loss, Span span) {

  /** A batch this near to a weight was computed to be that weight. */
  private static final BigFraction NEAR = new BigFraction(1, 200);

  /** Reads the order among a formula's facts; empty where there is none or it makes no sense. */
  public static Optional<PieceOrder> of(Facts facts) {
    return facts.first("makes").flatMap(PieceOrder::of);
  }

  private static Optional<PieceOrder> of(Statement makes) {
    Optional<BigFraction> pieces = makes
        .objectFigure(Unit.Dimension.COUNT)
        .map(PieceOrder::value)
        .filter(value -> value.signum() > 0);
    Optional<BigFraction> each = makes
        .figure(Connective.OF, Unit.Dimension.MASS)
        .map(PieceOrder::value)
        .filter(value -> value.signum() > 0);
    BigFraction loss = makes
        .figure(Connective.WITH, Unit.Dimension.SHARE)
        .map(PieceOrder::value)
        .orElse(BigFraction.ZERO);
    boolean isShare = loss.signum() >= 0 && loss.compareTo(BigFraction.ONE) < 0;
    return pieces.isPresent() && each.isPresent() && isShare
        ? Optional.of(new PieceOrder(pieces.get(), each.get(), loss, makes.span()))
        : Optional.empty();
  }

  /** What all pieces weigh together, in grams. */
  public BigFraction grams() {
    return pieces.multiply(gramsEach);
  }

  /** What must be there before the handling loss, in grams. */
  public BigFraction gramsBeforeLoss() {
    return grams().divide(BigFraction.ONE.subtract(loss));
  }

  /** Whether a weight in grams is, but for rounding, what must be there before the loss. */
  public boolean isNearly(BigFraction grams) {
    BigFraction difference = grams.subtract(gramsBeforeLoss()).abs();
    return difference.compareTo(gramsBeforeLoss().multiply(NEAR)) <= 0;
  }

  private static BigFraction value(Located<Quantity> figure) {
    return figure.value().middleInBase();
  }
}
