package dev.kettlemark.checks;

import dev.kettlemark.analysis.Agent;
import dev.kettlemark.analysis.Agent.Met;
import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports a whipping powder in much more or much less water than the fresh thing has that it stands in for.
 *
 * <p>Only a powder that stands in for something liquid is looked at, and only where it foams alone: beside
 * fresh egg white a little powder makes a stronger foam. What counts is the water that it meets before
 * sugar makes a syrup of it.
 */
public final class FoamPowderWater implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("foam-powder-water", "a whipping powder in too much or too little water");

  /** With more soluble solids the mass is a syrup and no foam liquid; an own choice. */
  private static final double SYRUP = 0.5;

  /** Parts of water on one part of egg white powder; egg board sheet: 0.12 and 0.88 parts. */
  private static final double USUAL = 7;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject
        .formula()
        .filter(formula -> formula.formula().steps().anyMatch(step -> step.is("whip")))
        .map(formula -> check(subject, formula))
        .orElse(List.of());
  }

  private static List<Finding> check(Subject subject, ComputedFormula formula) {
    Ratio least = subject.threshold(Threshold.LEAST_FOAM_WATER);
    Ratio most = subject.threshold(Threshold.MOST_FOAM_WATER);
    boolean isAlone = Foaming.of(formula).size() == 1;
    return Finish.all(formula).stream()
        .filter(agent -> isAlone && agent.ingredient().hasRole("whipping"))
        .filter(agent -> standsInForLiquid(subject, agent.ingredient()))
        .flatMap(agent -> water(agent)
            .filter(parts -> parts.compareTo(least) < 0 || parts.compareTo(most) > 0)
            .map(parts -> finding(subject, formula, agent, parts))
            .stream())
        .toList();
  }

  private static boolean standsInForLiquid(Subject subject, Ingredient powder) {
    boolean isPowder = powder.form().filter("powder"::equals).isPresent();
    return isPowder
        && powder.facts().wordsOf("stands-in-for").stream()
            .flatMap(fresh -> subject.ingredient(fresh.value()).stream())
            .anyMatch(Ingredient::isLiquid);
  }

  /** The most water that it lies in before it is a syrup, for each part of it. */
  private static Optional<Ratio> water(Agent agent) {
    return agent.met().stream()
        .filter(met -> met.solubleSolids().map(s -> s.fraction() < SYRUP).orElse(false))
        .map(Met::water)
        .flatMap(water -> water.toOptional().stream())
        .filter(water -> agent.mass().grams() > 0)
        .map(water -> water.dividedBy(agent.mass()))
        .max(Ratio::compareTo)
        .filter(parts -> parts.fraction() >= 1);
  }

  private static Finding finding(
      Subject subject, ComputedFormula formula, Agent agent, Ratio parts) {
    Finding finding = INFO.at(
            agent.line().span(),
            "`%s` lies in %s times its weight of water, usual is %s to %s times",
            agent.name(),
            Display.fixed(parts.fraction(), 1),
            Display.trimmed(subject.threshold(Threshold.LEAST_FOAM_WATER).fraction(), 1),
            Display.trimmed(subject.threshold(Threshold.MOST_FOAM_WATER).fraction(), 1))
        .because(
            "egg white has about seven parts of water to one of dry matter; far from it the foam is"
                + " thin, or a paste that takes no air");
    return water(formula, agent)
        .flatMap(line -> fix(subject, formula, line, USUAL / parts.fraction()))
        .map(finding::withFix)
        .orElse(finding);
  }

  /** The water of the powder's own stage, where it is a figure and not the rest. */
  private static Optional<Amounts.LineAmount> water(ComputedFormula formula, Agent agent) {
    return formula.amounts().lines().stream()
        .filter(line ->
            formula.formula().stages().get(line.stage()).name().value().equals(agent.stage()))
        .filter(line -> line.line().ingredient().value().equals("water"))
        .findFirst();
  }

  /** From another stage's water, so that the total stays; else from all other lines. */
  private static Optional<Fix> fix(
      Subject subject, ComputedFormula formula, Amounts.LineAmount water, double factor) {
    if (!TotalOff.hasTotal(formula)) {
      return change(subject, water.line(), factor);
    }
    double share = water.share().map(BigFraction::doubleValue).orElse(0.0);
    BigFraction wanted = OtherShare.share(share * factor);
    return WaterMove.fix(
            subject,
            formula,
            formula.formula().stages().get(water.stage()),
            OtherShare.share(share * (factor - 1)))
        .or(() -> OtherShare.edits(subject, formula, water, wanted)
            .map(edits -> new Fix(
                "Take " + Display.percent(wanted) + " of water and scale the rest", edits)));
  }

  private static Optional<Fix> change(Subject subject, AmountLine line, double factor) {
    Measure measure = line.measure().value();
    boolean isFigure = measure instanceof Measure.Share || measure instanceof Measure.Weight;
    return line.written()
        .filter(written -> isFigure && subject.isWrittenHere(line.span()))
        .map(written -> Figures.roundedDown(written.middle().doubleValue() * factor))
        .map(figure -> new Fix(
            "Take " + figure + " "
                + line.written().flatMap(w -> w.unit()).map(u -> u.symbol()).orElse("")
                + " of water",
            List.of(Figures.rewritten(subject.text(), line.measure().span(), figure))));
  }
}
