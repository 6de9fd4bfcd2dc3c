package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.model.AgentTraits;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Temperature;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reports an acid that lies in the mass before its gelling agent has taken up water.
 *
 * <p>Only agents that take up water hot are meant: gelatine is soaked in juice every day, and starch is
 * cooked with acid on purpose. The acid of fruit and a trace of any other do no harm, and a buffer makes
 * it doubtful.
 */
public final class EarlyAcid implements Rule {

  private static final RuleInfo INFO = RuleInfo.error(
      "early-acid", "an acid is in the mass before its gelling agent has taken up water");

  /** Acid of the whole mass that counts; cream of tartar in a foam stays below it, an own estimate. */
  private static final double LEAST_ACID = 0.001;

  /** What takes up water below it is soaked or stirred in cold; pantry figures of gelatine. */
  private static final Temperature HOT = Temperature.ofCelsius(60);

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject
        .formula()
        .filter(formula ->
            formula.formula().amounts().stream().anyMatch(line -> isHotGelling(formula, line)))
        .map(formula -> check(subject, formula))
        .orElse(List.of());
  }

  private static List<Finding> check(Subject subject, ComputedFormula formula) {
    WeighedIn weighed = WeighedIn.of(formula);
    Set<AmountLine> done = new HashSet<>();
    Set<AmountLine> told = new HashSet<>();
    List<Finding> findings = new ArrayList<>();
    for (DoneStep step : DoneStep.of(formula).toList()) {
      for (StageParcel parcel : step.after()) {
        List<WeighedIn.Held> held = weighed.in(step.stageIndex(), parcel);
        Optional<WeighedIn.Held> dry = held.stream()
            .filter(one -> isHotGelling(formula, one.line()) && !done.contains(one.line()))
            .findFirst();
        double grams = parcel.mass().map(Mass::grams).orElse(Double.POSITIVE_INFINITY);
        dry.ifPresent(gel -> held.stream()
            .filter(one -> isAdded(one) && acid(one) > grams * LEAST_ACID)
            .filter(one -> told.add(one.line()))
            .forEach(acid -> findings.add(finding(subject, formula, acid, gel, held))));
        held.stream()
            .filter(one -> isMet(one, parcel.temperature().high()))
            .forEach(one -> done.add(one.line()));
      }
    }
    return findings;
  }

  /** Whether an agent is, as far as heat goes, hydrated by now. */
  private static boolean isMet(WeighedIn.Held held, Temperature temperature) {
    return hydration(held.ingredient())
        .filter(condition -> temperature.compareTo(condition.limit()) >= 0)
        .isPresent();
  }

  private static boolean isHotGelling(ComputedFormula formula, AmountLine line) {
    Optional<Ingredient> ingredient =
        formula.material(line.ingredient().value()).flatMap(material -> material.ingredient());
    return ingredient
            .filter(known -> known.hasRole("gelling") && !known.hasRole("starch"))
            .isPresent()
        && hydration(ingredient)
            .filter(condition -> condition.above() && condition.limit().compareTo(HOT) >= 0)
            .isPresent();
  }

  private static Optional<AgentTraits.Condition> hydration(Optional<Ingredient> ingredient) {
    return ingredient.flatMap(known -> known.agent().hydrates());
  }

  /** Whether it is there for its acid; a sour fruit is what the jelly is made of. */
  private static boolean isAdded(WeighedIn.Held held) {
    return held.hasRole("acidulant") && !held.hasRole("fruit");
  }

  private static double acid(WeighedIn.Held held) {
    return held.mass().grams()
        * held.material()
            .flatMap(material -> material.composition().toOptional())
            .map(composition -> composition.fraction(Component.ACID))
            .orElse(0.0);
  }

  private static Finding finding(
      Subject subject,
      ComputedFormula formula,
      WeighedIn.Held acid,
      WeighedIn.Held gel,
      List<WeighedIn.Held> held) {
    boolean isBuffered = held.stream().anyMatch(one -> one.hasRole("mineral"));
    Finding finding = INFO.at(
            acid.line().ingredient().span(),
            "`%s` goes in before `%s` has taken up water",
            acid.name(),
            gel.name())
        .because("acid breaks a gelling agent in the heat, or makes it gel in lumps: acid last")
        .withRelated(subject.entry().origin(gel.line().ingredient().span()), "weighed in here")
        .withFixes(LaterAddition.of(subject, formula, acid.line(), acid.stage(), "mix").stream()
            .toList());
    return isBuffered ? finding.as(Severity.WARNING) : finding;
  }
}
