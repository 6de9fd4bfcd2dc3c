package dev.kettlemark.checks;

import dev.kettlemark.analysis.Boiling;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.State;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reports a tempered coat that is warmed, or used, above the heat at which its crystals melt. */
public final class LostTemper implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("lost-temper", "a tempered coat gets so warm that its temper is lost");

  private static final Set<Verb> COATING =
      EnumSet.of(Verb.ENROBE, Verb.DIP, Verb.BOTTOM, Verb.SPREAD, Verb.DEPOSIT, Verb.PIPE);

  private static final String USUAL = "31–32 °C";

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Temperature limit = subject.threshold(Threshold.TEMPER_LOST);
    return subject.formula().stream()
        .flatMap(formula -> formula.process().stages().stream()
            .flatMap(stage -> stage.steps().stream())
            .filter(step -> step.before().stream().anyMatch(parcel -> parcel.has(State.TEMPERED)))
            .filter(step -> !step.step().is("temper"))
            .flatMap(step -> check(subject, step, limit).stream())
            .map(finding -> OtherPlace.step(finding, subject, formula, "temper", "tempered here")))
        .toList();
  }

  private static Optional<Finding> check(Subject subject, StepResult step, Temperature limit) {
    Optional<Located<Quantity>> written = step.step()
        .figure(Connective.AT, Unit.Dimension.TEMPERATURE)
        .or(() -> step.step().figure(Connective.TO, Unit.Dimension.TEMPERATURE))
        .filter(figure -> Verb.of(step.step().word().value())
            .filter(verb -> COATING.contains(verb) || verb.effect() == Verb.Effect.HEAT)
            .isPresent());
    Optional<Band<Temperature>> heat = written
        .map(figure -> Boiling.band(figure.value()))
        .or(step::merged)
        .filter(band -> band.isWhollyAbove(limit));
    return heat.map(band -> {
      Finding finding = INFO.at(
              written.map(Located::span).orElse(step.step().word().span()),
              "the coat was tempered, and %s melts its crystals",
              Display.celsius(band))
          .because("above " + Display.celsius(limit)
              + " cocoa butter loses its temper; the coat blooms and stays soft");
      return written
          .filter(figure -> subject.isWrittenHere(figure.span()))
          .map(figure -> finding.withFix(fix(subject, step, figure)))
          .orElse(finding);
    });
  }

  private static Fix fix(Subject subject, StepResult step, Located<Quantity> figure) {
    String range =
        TemperRange.of(subject, step.before()).map(TemperRange::shown).orElse(USUAL);
    return Fix.replace("Write `" + range + "`", figure.span(), range);
  }
}
