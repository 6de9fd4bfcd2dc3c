package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reports raw fruit whose enzymes digest the gelatine or the egg that is to hold the mass.
 *
 * <p>Pineapple, kiwi, papaya, fig and ginger do so, until they are heated.
 */
public final class RawFruitOnProtein implements Rule {

  private static final RuleInfo INFO = RuleInfo.error(
      "raw-fruit-on-protein", "raw fruit digests the protein that is to hold the mass");

  /** A fix heats a little further, so that all of it gets there. */
  private static final double MARGIN = 5;

  /** A gel or a foam of this much protein in its dry matter rests on protein; an own choice. */
  private static final double RESTS_ON_PROTEIN = 0.5;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().map(formula -> check(subject, formula)).orElse(List.of());
  }

  private static List<Finding> check(Subject subject, ComputedFormula formula) {
    Optional<Located<String>> protein = formula.formula().amounts().stream()
        .map(AmountLine::ingredient)
        .filter(name ->
            subject.ingredient(name.value()).filter(RawFruitOnProtein::isHeld).isPresent())
        .findFirst();
    Temperature limit = subject.threshold(Threshold.ENZYME_HEAT);
    List<Finding> findings = new ArrayList<>();
    for (Stage stage : formula.formula().stages()) {
      for (AmountLine line : stage.amounts()) {
        Located<String> fruit = line.ingredient();
        boolean isRaw = subject
                .ingredient(fruit.value())
                .filter(found -> found.hasTrait("protease"))
                .isPresent()
            && HeatOf.hottest(formula, fruit.value())
                .filter(heat -> heat.compareTo(limit) >= 0)
                .isEmpty();
        if (isRaw && protein.isPresent()) {
          findings.add(finding(subject, stage, fruit, protein.get(), limit));
        }
      }
    }
    return findings;
  }

  /** Whether it gels or foams with its protein. */
  private static boolean isHeld(Ingredient ingredient) {
    return (ingredient.hasRole("gelling") || ingredient.hasRole("whipping"))
        && ingredient
            .composition()
            .map(composition -> composition.fraction(Component.PROTEIN)
                >= RESTS_ON_PROTEIN * composition.solids().fraction())
            .orElse(false);
  }

  private static Finding finding(
      Subject subject,
      Stage stage,
      Located<String> fruit,
      Located<String> protein,
      Temperature limit) {
    Finding finding = INFO.at(
            fruit.span(),
            "`%s` is never heated to %s, and digests `%s`",
            fruit.value(),
            Display.celsius(limit),
            protein.value())
        .because("its enzymes cut protein to pieces; the gel melts and the foam falls within hours")
        .withRelated(subject.entry().origin(protein.span()), "what it digests");
    String target = Display.celsius(Temperature.ofCelsius(limit.celsius() + MARGIN));
    return firstStep(subject, stage)
        .map(span -> WrittenLines.of(subject)
            .above(span, WrittenLines.step("warm", fruit.value() + " to " + target + " for 2 min")))
        .map(edit -> finding.withFix(
            new Fix("Warm `" + fruit.value() + "` to " + target + " first", List.of(edit))))
        .orElse(finding);
  }

  private static Optional<Span> firstStep(Subject subject, Stage stage) {
    return stage.steps().stream()
        .map(step -> step.span())
        .filter(subject::isWrittenHere)
        .findFirst();
  }
}
