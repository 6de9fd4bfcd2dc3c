package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.UseRange;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.text.Excerpt;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

  @Override
  public RuleInfo info() {
    return INFO;
  }

  /** Proposals are worked out for so many findings; nobody mends more at once. */
  private static final int MOST_PROPOSALS = 20;

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().map(computed -> check(subject, computed)).orElse(List.of());
  }

  private static List<Finding> check(Subject subject, ComputedFormula computed) {
    Ratio overdose = subject.threshold(Threshold.GUM_OVERDOSE);
    Map<String, Double> liquids = new HashMap<>();
    List<Finding> findings = new ArrayList<>();
    for (Amounts.LineAmount amount : computed.amounts().lines()) {
      Optional<UseRange> usual = Optional.of(amount.line())
          .filter(line -> !computed.formula().inherits(line.span()))
          .filter(line -> ChargeLines.isOfCharge(computed, line))
          .flatMap(line -> computed.material(line.ingredient().value()))
          .flatMap(material -> material.ingredient())
          .flatMap(GumOfCharge::usual);
      if (usual.isPresent()) {
        String liquid = usual.get().basis().words();
        double in = liquids.computeIfAbsent(liquid, name -> Liquid.of(computed, name));
        amount
            .share()
            .toOptional()
            .filter(share -> in > 0 && Liquid.isWet(computed, liquid))
            .map(share -> Ratio.ofFraction(share.doubleValue() / in))
            .filter(dose -> dose.compareTo(usual.get().high().times(overdose)) > 0)
            .map(dose -> finding(subject, computed, amount, usual.get(), dose))
            .map(finding -> findings.size() < MOST_PROPOSALS
                ? finding.withFixes(fixes(subject, computed, amount, liquid))
                : finding)
            .ifPresent(findings::add);
      }
    }
    return findings;
  }

  private static Optional<UseRange> usual(Ingredient ingredient) {
    return ingredient.uses().stream()
        .filter(use -> use.basis() instanceof Basis.Named named
            && LIQUIDS.contains(named.name().value()))
        .findFirst();
  }

  private static Finding finding(
      Subject subject,
      ComputedFormula computed,
      Amounts.LineAmount amount,
      UseRange usual,
      Ratio dose) {
    String liquid = usual.basis().words();
    Finding finding = INFO.at(
            amount.line().measure().span(),
            "%s of charge is %s of %s for %s",
            amount.share().map(Display::percent).orElse(""),
            Display.percent(dose),
            Liquid.isDeclared(computed, liquid) ? "`" + liquid + "`" : "all water",
            Excerpt.of(amount.line().ingredient().value()))
        .because("usual is " + Display.percentFigure(usual.low().percent()) + "–"
            + Display.percent(usual.high()) + " of " + liquid + "; so much makes rubber");
    return OtherPlace.fact(finding, subject, amount.line().ingredient().value(), "use");
  }

  /** Writes the dose of the liquid, and declares the liquid where the formula does not. */
  private static List<Fix> fixes(
      Subject subject, ComputedFormula computed, Amounts.LineAmount amount, String liquid) {
    Columns columns = new Columns(subject.section());
    List<TextEdit> edits = new ArrayList<>();
    if (!Liquid.isDeclared(computed, liquid)) {
      BasisProposal.members(computed, computed.formula().stages().get(amount.stage()))
          .map(members -> columns.addFact(Optional.empty(), "basis", liquid + " = " + members))
          .ifPresent(edits::add);
      if (edits.isEmpty()) {
        return List.of();
      }
    }
    String written = figure(subject, amount.line()) + " of " + liquid;
    edits.add(columns.replaceMeasure(amount.line(), written));
    Optional<Amounts.LineAmount> rest = TotalOff.waterThatTakesUp(subject, computed, amount);
    rest.map(water -> columns.replaceMeasure(water.line(), "q.s.")).ifPresent(edits::add);
    String andRest = rest.map(
            water -> ", and let `" + water.line().ingredient().value() + "` take up what is left")
        .orElse("");
    return List.of(new Fix("Write `" + written + "`" + andRest, edits));
  }

  /** The figure with its unit and without a basis. */
  private static String figure(Subject subject, AmountLine line) {
    String written = line.measure().span().of(subject.text());
    int of = written.indexOf(" of ");
    return of < 0 ? written : written.substring(0, of).stripTrailing();
  }
}
