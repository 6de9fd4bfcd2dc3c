package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.BasisWeights;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.UseRange;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reports a gum that is dosed of the charge where its usual dose is of the liquid.
 *
 * <p>Where the liquid is a few percent of the charge, an everyday figure becomes a dose at which the
 * mass turns to rubber.
 */
public final class GumOfCharge implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "gum-of-charge",
      "a gum is dosed of the charge, and its liquid carries far more than is usual");

  /** What a use range is of if it is of the liquid. */
  private static final Set<String> LIQUIDS = Set.of("liquid", "water");

  /** A dose above the usual has its reasons, one of three times the most has not; common practice, no source. */
  private static final double FAR_ABOVE = 3;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(computed -> computed.amounts().lines().stream()
            .filter(line -> !computed.formula().inherits(line.line().span()))
            .filter(line -> ChargeLines.isOfCharge(computed, line.line()))
            .flatMap(line -> finding(subject, computed, line).stream()))
        .toList();
  }

  private static Optional<Finding> finding(
      Subject subject, ComputedFormula computed, Amounts.LineAmount amount) {
    Optional<UseRange> usual = computed
        .material(amount.line().ingredient().value())
        .flatMap(material -> material.ingredient())
        .flatMap(GumOfCharge::usual);
    Optional<Ratio> dose =
        usual.flatMap(use -> dose(computed, amount, use.basis().words()));
    if (dose.isEmpty()
        || dose.get().fraction() <= FAR_ABOVE * usual.get().high().fraction()) {
      return Optional.empty();
    }
    return Optional.of(finding(subject, computed, amount, usual.get(), dose.get()));
  }

  private static Optional<UseRange> usual(Ingredient ingredient) {
    return ingredient.uses().stream()
        .filter(use -> use.basis() instanceof Basis.Named named
            && LIQUIDS.contains(named.name().value()))
        .findFirst();
  }

  /**
   * The dose in the liquid.
   *
   * <p>The liquid is the basis that the formula declares under that name. Without one it is all water
   * that the formula weighs in, whatever brings it: the most that the gum can meet, so that the dose is
   * rather told too low.
   */
  private static Optional<Ratio> dose(
      ComputedFormula computed, Amounts.LineAmount amount, String liquid) {
    double in = declared(computed.formula(), liquid)
        ? BasisWeights.of(computed.formula(), liquid)
            .map(weights -> computed.amounts().weighted(weights).doubleValue())
            .orElse(0.0)
        : waterOf(computed);
    return in <= 0
        ? Optional.empty()
        : amount.share().toOptional().map(s -> Ratio.ofFraction(s.doubleValue() / in));
  }

  private static boolean declared(Formula formula, String liquid) {
    return formula.basis(liquid).isPresent();
  }

  /** An ingredient of unknown composition counts as water, for the same reason. */
  private static double waterOf(ComputedFormula computed) {
    return computed.amounts().lines().stream()
        .mapToDouble(line -> line.share().map(s -> s.doubleValue()).orElse(0.0)
            * computed
                .material(line.line().ingredient().value())
                .flatMap(material -> material.composition().toOptional())
                .map(composition -> composition.fraction(Component.WATER))
                .orElse(1.0))
        .sum();
  }

  private static Finding finding(
      Subject subject,
      ComputedFormula computed,
      Amounts.LineAmount amount,
      UseRange usual,
      Ratio dose) {
    AmountLine line = amount.line();
    String liquid = usual.basis().words();
    boolean isDeclared = declared(computed.formula(), liquid);
    Finding finding = INFO.at(
            line.measure().span(),
            "%s of charge is %s of %s for `%s`",
            amount.share().map(Display::percent).orElse(""),
            Display.percent(dose),
            isDeclared ? "`" + liquid + "`" : "all water",
            line.ingredient().value())
        .because("usual is " + Display.percentFigure(usual.low().percent()) + "–"
            + Display.percent(usual.high()) + " of " + liquid + "; so much makes rubber");
    Optional<TextEdit> basis = isDeclared
        ? Optional.empty()
        : BasisProposal.members(computed, computed.formula().stages().get(amount.stage()))
            .map(members -> new Columns(subject.section())
                .addFact(Optional.empty(), "basis", liquid + " = " + members));
    if (!isDeclared && basis.isEmpty()) {
      return finding;
    }
    List<TextEdit> edits = new ArrayList<>();
    basis.ifPresent(edits::add);
    String written = figure(subject, line) + " of " + liquid;
    edits.add(new Columns(subject.section()).replaceMeasure(line, written));
    return finding.withFix(new Fix("Write `" + written + "`", edits));
  }

  /** The figure with its unit and without a basis. */
  private static String figure(Subject subject, AmountLine line) {
    String written = line.measure().span().of(subject.text());
    int of = written.indexOf(" of ");
    return of < 0 ? written : written.substring(0, of).stripTrailing();
  }
}
