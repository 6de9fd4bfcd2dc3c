package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Kitchen;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Portion;
import dev.kettlemark.model.State;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.quantity.TemperatureDifference;
import dev.kettlemark.science.SugarStage;
import dev.kettlemark.science.SyrupBoiling;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reports a cook step whose temperature and sugar stage speak of different syrups.
 *
 * <p>The names belong to temperatures at sea level. A figure that fits either as written or turned
 * into what leaves the same solids at sea level is right.
 */
public final class StageNameMismatch implements Rule {

  private static final RuleInfo INFO = RuleInfo.error(
      "stage-name-mismatch", "the temperature and the sugar stage contradict each other");

  /** Handbooks round their ranges to whole degrees of either scale; see {@link SugarStage}. */
  private static final double ROUNDING = 1;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(formula -> CookStep.of(formula).flatMap(cook -> check(subject, formula, cook)))
        .toList();
  }

  private static Stream<Finding> check(Subject subject, ComputedFormula formula, CookStep cook) {
    return cook.step().names(Connective.UNTIL).stream()
        .flatMap(word -> SugarStage.ofWord(word.value())
            .flatMap(stage -> check(subject, formula, cook, word, stage))
            .stream());
  }

  private static Optional<Finding> check(
      Subject subject,
      ComputedFormula formula,
      CookStep cook,
      Located<String> word,
      SugarStage stage) {
    Band<Temperature> seaLevel = atSeaLevel(formula, cook);
    double apart = Math.min(apart(cook.band(), stage.range()), apart(seaLevel, stage.range()));
    if (apart <= ROUNDING) {
      return Optional.empty();
    }
    boolean isElsewhere = apart(seaLevel, cook.band()) > ROUNDING;
    Finding finding = INFO.at(
            word.span(),
            "`%s` lies at %s, not at %s%s",
            stage.word(),
            Display.celsius(stage.range()),
            Display.celsius(cook.band()),
            isElsewhere ? ", which is like " + Display.celsius(seaLevel) + " at sea level" : "")
        .because("one cook goes by the thermometer and one by the look, and their syrups differ")
        .withRelated(subject.entry().origin(cook.target().span()), "the temperature");
    double slack = subject.threshold(Threshold.SUGAR_STAGE_SLACK).kelvin();
    Finding graded = apart > slack ? finding : finding.as(Severity.WARNING);
    return Optional.of(
        subject.isWrittenHere(word.span())
            ? graded.withFixes(fixes(cook, word, stage, seaLevel))
            : graded);
  }

  /** How many kelvin lie between two bands; 0 where they overlap. */
  private static double apart(Band<Temperature> one, Band<Temperature> other) {
    TemperatureDifference below = other.low().minus(one.high());
    TemperatureDifference above = one.low().minus(other.high());
    return Math.max(0, Math.max(below.kelvin(), above.kelvin()));
  }

  private static Band<Temperature> atSeaLevel(ComputedFormula formula, CookStep cook) {
    Optional<Portion> charge = cook.charge();
    return charge
        .map(portion -> cook.band()
            .map(temperature -> SyrupBoiling.sameSolids(
                    portion.composition(),
                    temperature,
                    formula.kitchen().pressure(),
                    Kitchen.SEA_LEVEL)
                .orElse(temperature)))
        .orElseGet(cook::band);
  }

  private static List<Fix> fixes(
      CookStep cook, Located<String> word, SugarStage stage, Band<Temperature> seaLevel) {
    List<Fix> fixes = new ArrayList<>();
    Temperature middle = Temperature.middleOf(seaLevel);
    for (SugarStage fitting : SugarStage.at(middle)) {
      if (State.of(fitting.word()).isPresent()) {
        fixes.add(Fix.replace("Write `" + fitting.word() + "`", word.span(), fitting.word()));
      }
    }
    boolean isFahrenheit =
        cook.target().value().unit().filter(unit -> unit == Unit.FAHRENHEIT).isPresent();
    String figure = isFahrenheit
        ? Display.fahrenheit(Temperature.middleOf(stage.rangePrintedInFahrenheit()))
        : Display.celsius(Temperature.middleOf(stage.range()));
    fixes.add(Fix.replace("Cook to " + figure, cook.target().span(), figure));
    return fixes;
  }
}
