package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.text.TextEdit;
import java.util.List;
import java.util.Optional;

/**
 * Reports a pectin that sets in acid only, in a formula without any acid.
 *
 * <p>How acid a mass is cannot be computed, since fruit and buffers hold acid back; without any it
 * certainly is not acid enough.
 */
public final class AcidlessPectin implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("acidless-pectin", "a pectin that sets in acid has no acid");

  /** What fruit in traces and dextrose bring counts as none; an own choice. */
  private static final Ratio TRACE = Ratio.ofPercent(0.02);

  private static final String ACID = "citric-acid-solution-50";

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(formula -> Finish.agents(formula).stream()
            .flatMap(agent -> AcidGel.of(formula, agent).stream())
            .filter(gel -> gel.acid().filter(acid -> acid.compareTo(TRACE) < 0).isPresent())
            .map(gel -> finding(subject, formula, gel)))
        .toList();
  }

  private static Finding finding(Subject subject, ComputedFormula formula, AcidGel gel) {
    Finding finding = INFO.at(
            gel.agent().line().span(),
            "`%s` sets in acid, and nothing here is acid",
            gel.agent().name())
        .because("it gels at about pH 2.8 to 3.6 only; without acid the mass stays a syrup");
    return acid(subject, formula).map(finding::withFix).orElse(finding);
  }

  /** Acid goes in last, behind the last boil. */
  private static Optional<Fix> acid(Subject subject, ComputedFormula formula) {
    boolean hasRest = formula.formula().amounts().stream()
        .map(AmountLine::measure)
        .anyMatch(measure -> measure.value() instanceof Measure.Sufficient);
    Optional<Stage> last = formula.formula().stages().stream()
        .filter(
            stage -> stage.steps().stream().anyMatch(step -> isHot(step.word().value())))
        .reduce((one, later) -> later);
    if (last.isEmpty() || !hasRest || subject.ingredient(ACID).isEmpty()) {
      return Optional.empty();
    }
    WrittenLines lines = WrittenLines.of(subject);
    Optional<TextEdit> amount =
        lines.behindAmounts(last.get(), WrittenLines.amount("1.00 %", ACID));
    Optional<TextEdit> step = last.get().steps().stream()
        .filter(found -> isHot(found.word().value()) && subject.isWrittenHere(found.span()))
        .reduce((one, later) -> later)
        .map(found -> lines.below(found.span(), WrittenLines.step("mix", ACID)));
    return amount.flatMap(weigh -> step.map(mix -> new Fix("Add acid last", List.of(weigh, mix))));
  }

  private static boolean isHot(String verb) {
    return Verb.of(verb)
        .map(Verb::effect)
        .filter(effect -> effect == Verb.Effect.BOIL || effect == Verb.Effect.COOK)
        .isPresent();
  }
}
