package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Ingredient;
import java.util.List;
import java.util.Optional;

/**
 * Reports a foam that is piped or dried and that nothing in it sets.
 *
 * <p>Egg white coagulates in the warmth and keeps its shape. A protein of which the pantry says
 * {@code coagulates no} does not; a gelling agent, a gum or gelatine must hold it.
 */
public final class UnsetFoam implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("unset-foam", "a foam is piped or dried, and nothing in it sets");

  private static final List<String> HOLDING = List.of("gelling", "thickening", "starch");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject
        .formula()
        .filter(UnsetFoam::keepsItsShape)
        .flatMap(formula -> check(subject, formula))
        .stream()
        .toList();
  }

  private static boolean keepsItsShape(ComputedFormula formula) {
    return formula.formula().steps().anyMatch(step -> step.is("dry") || step.is("pipe"));
  }

  private static Optional<Finding> check(Subject subject, ComputedFormula formula) {
    List<Foaming> foaming = Foaming.of(formula);
    boolean isHeld = formula.formula().amounts().stream()
        .map(AmountLine::ingredient)
        .map(name -> subject.ingredient(name.value()))
        .anyMatch(found -> found.isEmpty() || holds(found.get()));
    boolean neverSets = !foaming.isEmpty()
        && foaming.stream().allMatch(agent -> agent.ingredient().facts().says("coagulates", "no"));
    return neverSets && !isHeld
        ? Optional.of(finding(subject, formula, foaming.get(0)))
        : Optional.empty();
  }

  private static boolean holds(Ingredient ingredient) {
    return !ingredient.hasRole("whipping") && HOLDING.stream().anyMatch(ingredient::hasRole);
  }

  private static Finding finding(Subject subject, ComputedFormula formula, Foaming agent) {
    Finding finding = INFO.at(
            agent.line().ingredient().span(),
            "`%s` does not set with heat, and nothing else here sets",
            agent.name())
        .because(
            "the foam creeps and falls before it is dry; add a gum to its liquid, and a gelling agent"
                + " where it must stand high");
    return gum(subject, formula, agent).map(finding::withFix).orElse(finding);
  }

  /** A gum of the agent's water, blended with the first sugar of its stage. */
  private static Optional<Fix> gum(Subject subject, ComputedFormula formula, Foaming agent) {
    WrittenLines lines = WrittenLines.of(subject);
    return formula
        .formula()
        .stage(agent.stage())
        .filter(stage -> subject.ingredient("xanthan-gum").isPresent())
        .flatMap(stage -> stage.steps().stream()
            .map(step -> step.span())
            .filter(subject::isWrittenHere)
            .findFirst()
            .flatMap(first -> lines
                .behindAmounts(stage, WrittenLines.amount("0.30 % of water", "xanthan-gum"))
                .map(weigh -> new Fix(
                    "Thicken its liquid with 0.30 % of `xanthan-gum`",
                    List.of(
                        weigh,
                        lines.above(
                            first,
                            WrittenLines.step(
                                "blend", "xanthan-gum" + sugar(subject, formula, agent))))))));
  }

  private static String sugar(Subject subject, ComputedFormula formula, Foaming agent) {
    return formula.formula().stage(agent.stage()).stream()
        .flatMap(stage -> stage.amounts().stream())
        .map(line -> line.ingredient().value())
        .filter(name -> subject
            .ingredient(name)
            .filter(found -> found.hasRole("sweetening") && !found.isLiquid())
            .isPresent())
        .findFirst()
        .map(name -> ", " + name)
        .orElse(", " + agent.name());
  }
}
