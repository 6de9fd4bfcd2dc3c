package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Volume;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Reports a whipped mass that its bowl does not hold.
 *
 * <p>How light a mass becomes is an estimate, so it is an error only where the mass overflows even at its
 * densest, a warning where it then fills more of the bowl than is wise, and worth knowing where it
 * overflows at its lightest.
 */
public final class BowlOverflow implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("bowl-overflow", "a whipped mass fills more than its bowl");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().filter(formula -> !formula.isNominal()).stream()
        .flatMap(formula -> formula.process().stages().stream()
            .flatMap(stage -> check(subject, formula, stage).stream()))
        .toList();
  }

  private record Filled(StepResult step, Band<Volume> volume) {}

  private static Optional<Finding> check(
      Subject subject, ComputedFormula formula, StageResult stage) {
    Optional<House.Vessel> bowl = formula.kitchen().vesselOf(stage.stage());
    return bowl.flatMap(found -> found
        .holds()
        .flatMap(holds -> stage.steps().stream()
            .flatMap(step -> filled(formula, step).stream())
            .max(Comparator.comparing(filled -> filled.volume().high()))
            .flatMap(filled -> finding(subject, formula, filled, found.name().value(), holds))));
  }

  private static Optional<Filled> filled(ComputedFormula formula, StepResult step) {
    return step.after().stream()
        .filter(mass -> mass.isAerated())
        .flatMap(mass -> MassFigures.of(mass, formula.kitchen()).volume().toOptional().stream())
        .map(volume -> new Filled(step, volume))
        .max(Comparator.comparing(filled -> filled.volume().high()));
  }

  private static Optional<Finding> finding(
      Subject subject, ComputedFormula formula, Filled filled, String bowl, Volume holds) {
    Ratio wise = subject.threshold(Threshold.BOWL_FILL);
    Volume low = filled.volume().low();
    Volume high = filled.volume().high();
    Severity severity;
    if (low.compareTo(holds) > 0) {
      severity = Severity.ERROR;
    } else if (low.compareTo(holds.times(wise)) > 0) {
      severity = Severity.WARNING;
    } else if (high.compareTo(holds) > 0) {
      severity = Severity.INFORMATION;
    } else {
      return Optional.empty();
    }
    double factor = Math.min(
        holds.times(wise).dividedBy(low).fraction(), holds.dividedBy(high).fraction());
    Finding finding = OtherPlace.tool(
        INFO.at(
                filled.step().step().word().span(),
                "the whipped mass takes about %s, and `%s` holds %s",
                Display.volume(filled.volume()),
                bowl,
                Display.volume(Band.of(holds)))
            .as(severity)
            .because(
                "a bowl that is more than " + Display.trimmed(wise.percent(), 0)
                    + " % full throws hot mass over its rim; make a smaller batch, split it, or take a larger bowl"),
        subject,
        bowl);
    return Optional.of(
        BatchFix.smaller(subject, formula, factor).map(finding::withFix).orElse(finding));
  }
}
