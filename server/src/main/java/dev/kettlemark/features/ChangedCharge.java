package dev.kettlemark.features;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.hipparchus.fraction.BigFraction;

/**
 * A formula whose charge becomes another one while its lines keep their grams.
 *
 * @param before the charge as it is, in grams
 * @param after the charge as it will be, in grams
 */
record ChangedCharge(BigFraction before, BigFraction after) {

  /** How far written grams may be from the exact ones. */
  static final BigFraction GRAM_SLACK = new BigFraction(1, 10_000_000_000L);

  /** A share of the charge as it is written on a line. */
  static String percent(BigFraction share) {
    return WrittenFigure.of(
                share.multiply(100),
                BasisRefactoring.PERCENT_DECIMALS,
                BasisRefactoring.SLACK.multiply(10))
            .text()
        + " %";
  }

  /**
   * The lines of the new charge, and its batch.
   *
   * @param changes whether a line, by its number, is written as a share of the charge
   */
  List<TextEdit> edits(RefactoringSite site, IntPredicate changes) {
    List<TextEdit> edits = new ArrayList<>();
    if (before.equals(after)) {
      return edits;
    }
    List<LineAmount> lines = site.computed().amounts().lines();
    for (int i = 0; i < lines.size(); i++) {
      if (changes.test(i)) {
        BigFraction share = lines.get(i).share().orElse(BigFraction.ZERO);
        edits.add(site.measured(i, percent(share.multiply(before).divide(after))));
      }
    }
    site.computed()
        .formula()
        .batch()
        .ifPresent(batch -> edits.add(
            new TextEdit(batch.span(), WrittenFigure.of(after, 0, GRAM_SLACK).text() + " g")));
    return edits;
  }
}
