package dev.kettlemark.analysis;

import dev.kettlemark.model.AmountLine;
import dev.kettlemark.quantity.Outcome;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * The amounts of a formula, exact.
 *
 * @param lines one for each amount line, in order
 * @param charge what all shares are of, in grams; empty where the formula gives no weight at all
 * @param solved whether the system had one solution; otherwise the lines that hang on each other are
 *     unknown
 */
public record Amounts(List<LineAmount> lines, Optional<BigFraction> charge, boolean solved) {

  public Amounts {
    lines = List.copyOf(lines);
  }

  /**
   * One line's amount.
   *
   * @param stage index of its stage
   * @param line the line itself
   * @param share its share of the charge, as a fraction of one
   */
  public record LineAmount(int stage, AmountLine line, Outcome<BigFraction> share) {}

  /** The sum of all known shares. */
  public BigFraction total() {
    return sum(lines);
  }

  /** The sum of the known shares weighed into one stage. */
  public BigFraction totalOf(int stage) {
    return sum(lines.stream().filter(line -> line.stage() == stage).toList());
  }

  /** Whether every line has a share. */
  public boolean complete() {
    return lines.stream().allMatch(line -> line.share().isKnown());
  }

  /** The share of the lines of one name. */
  public BigFraction shareOf(String ingredient) {
    return sum(lines.stream()
        .filter(line -> line.line().ingredient().value().equals(ingredient))
        .toList());
  }

  /** A line's weight in grams; unknown where its share or the charge is. */
  public Optional<BigFraction> grams(LineAmount line) {
    return charge.flatMap(weight -> line.share().toOptional().map(weight::multiply));
  }

  /** The share of a basis, by the weights that {@link BasisWeights} gives. */
  public BigFraction weighted(List<BigFraction> weights) {
    BigFraction sum = BigFraction.ZERO;
    for (int i = 0; i < weights.size(); i++) {
      if (weights.get(i).signum() != 0) {
        sum = sum.add(lines.get(i).share().orElse(BigFraction.ZERO).multiply(weights.get(i)));
      }
    }
    return sum;
  }

  private static BigFraction sum(List<LineAmount> lines) {
    return lines.stream()
        .map(line -> line.share().orElse(BigFraction.ZERO))
        .reduce(BigFraction.ZERO, BigFraction::add);
  }
}
