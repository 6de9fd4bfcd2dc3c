package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reports a chewy foam of which even the mildest syrup is cooked hard.
 *
 * <p>The first syrup gives the bite, and the second, cooked less, makes it chewy.
 */
public final class HotSecondSyrup implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "hot-second-syrup", "the second syrup is cooked too far to keep the foam chewy");

  private static final Set<String> POURING = Set.of("stream", "pour");

  /** Where the second syrup of a chewy foam usually ends; common practice, no source. */
  private static final Temperature USUAL = Temperature.ofCelsius(124);

  /** From here on even a mild syrup snaps; common practice, no source. */
  private static final Temperature CERTAINLY_HARD = Temperature.ofCelsius(145);

  /** What is poured cooler than this is no syrup, or will not cook anything. */
  private static final Temperature SYRUP = Temperature.ofCelsius(100);

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject
        .formula()
        .filter(formula -> formula.formula().facts().says("texture", "chewy"))
        .map(formula -> formula.process().stages().stream()
            .flatMap(stage -> check(subject, formula, stage).stream())
            .toList())
        .orElse(List.of());
  }

  private static Optional<Finding> check(
      Subject subject, ComputedFormula formula, StageResult stage) {
    List<CookStep> syrups = stage.steps().stream()
        .filter(step -> POURING.contains(step.step().word().value()))
        .filter(step -> step.after().stream().anyMatch(StageParcel::isAerated))
        .flatMap(step -> step.step().objectNames().stream())
        .flatMap(name -> lastCook(formula, name.value()).stream())
        .filter(cook -> cook.band().isWhollyAbove(SYRUP))
        .distinct()
        .toList();
    if (syrups.size() < 2) {
      return Optional.empty();
    }
    Temperature limit = subject.threshold(Threshold.CHEWY_SYRUP);
    return syrups.stream()
        .min(Comparator.comparing(cook -> cook.band().low()))
        .filter(mildest -> mildest.band().isWhollyAbove(limit))
        .map(mildest -> others(subject, syrups, mildest, finding(subject, mildest, limit)));
  }

  private static Finding others(
      Subject subject, List<CookStep> syrups, CookStep mildest, Finding finding) {
    Finding result = finding;
    for (CookStep other : syrups) {
      if (!other.equals(mildest) && subject.isWrittenHere(other.target().span())) {
        result = result.withRelated(subject.entry().origin(other.step().span()), "the other syrup");
      }
    }
    return result;
  }

  private static Optional<CookStep> lastCook(ComputedFormula formula, String stage) {
    return CookStep.of(formula)
        .filter(cook -> cook.stage().name().value().equals(stage))
        .reduce((one, later) -> later);
  }

  private static Finding finding(Subject subject, CookStep mildest, Temperature limit) {
    Finding finding = INFO.at(
            mildest.target().span(),
            "every syrup of this foam is cooked to %s or more",
            Display.celsius(mildest.middle()))
        .because("the second syrup keeps the foam chewy, and above " + Display.celsius(limit)
            + " it turns hard and brittle")
        .withFixes(mildest.cookToHere(subject, USUAL));
    return mildest.band().isWhollyAbove(CERTAINLY_HARD) ? finding.as(Severity.ERROR) : finding;
  }
}
