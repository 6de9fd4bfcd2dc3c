package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Measure;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/** Gives one line another share of the charge, and lets all others keep their ratios. */
final class OtherShare {

  private OtherShare() {}

  /**
   * The edits, or nothing where some line is not a percentage of the charge written here.
   *
   * @param changed the line, which may be the one that takes up the rest
   * @param share what it is to be, from 0 to below 1
   */
  static Optional<List<TextEdit>> edits(
      Subject subject, ComputedFormula computed, Amounts.LineAmount changed, BigFraction share) {
    ChargeLines charge = ChargeLines.of(computed);
    List<Amounts.LineAmount> rest = computed.amounts().lines().stream()
        .filter(line -> line.line().measure().value() instanceof Measure.Sufficient)
        .toList();
    BigFraction old = changed.share().orElse(BigFraction.ONE);
    boolean isWritten =
        charge.all().size() + rest.size() == computed.amounts().lines().size()
            && rest.stream()
                .noneMatch(line -> computed.formula().inherits(line.line().span()));
    if (!isWritten || subject.variant().isPresent() || old.compareTo(BigFraction.ONE) >= 0) {
      return Optional.empty();
    }
    BigFraction factor = BigFraction.ONE.subtract(share).divide(BigFraction.ONE.subtract(old));
    BigFraction left = BigFraction.ONE;
    List<BigFraction> shares = new ArrayList<>();
    for (Amounts.LineAmount line : charge.all()) {
      BigFraction exact =
          line.equals(changed) ? share : line.share().orElse(BigFraction.ZERO).multiply(factor);
      BigFraction rounded = ChargeLines.rounded(line.line(), exact);
      shares.add(rounded);
      left = left.subtract(rounded);
    }
    Optional<Amounts.LineAmount> largest = charge.largest(line -> !line.equals(changed));
    List<TextEdit> edits = new ArrayList<>();
    for (int i = 0; i < shares.size(); i++) {
      Amounts.LineAmount line = charge.all().get(i);
      boolean takesRest = rest.isEmpty() && largest.filter(line::equals).isPresent();
      edits.add(ChargeLines.rewritten(
          subject.text(), line.line(), takesRest ? shares.get(i).add(left) : shares.get(i)));
    }
    return Optional.of(edits);
  }

  static BigFraction share(double share) {
    return new BigFraction(Math.round(share * 10_000), 10_000);
  }
}
