package dev.kettlemark.checks;

import dev.kettlemark.analysis.Agent;
import dev.kettlemark.analysis.AgentReport;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.State;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.quantity.TemperatureDifference;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reports a mass that is deposited at a temperature at which its gel already sets.
 *
 * <p>The temperature as written counts: the lowest that the step allows. Below the setting point it is
 * an error, and within the usual margin above it a warning; gelatine, which sets slowly, gets a warning
 * below it and nothing above. Where the step says none, a mass that the
 * model sees gelled gets a warning.
 */
public final class DepositBelowSetting implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("deposit-below-setting", "a mass is deposited when its gel already sets");

  private static final Set<String> DEPOSITING = Set.of("deposit", "pipe", "spread");

  /** A gel that melts in the mouth sets slowly; pantry figures of gelatine. */
  private static final Temperature SLOW_GEL = Temperature.ofCelsius(40);

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(DoneStep::of)
        .filter(step -> step.is(DEPOSITING))
        .filter(step -> step.before().stream().noneMatch(parcel -> parcel.has(State.SET)))
        .flatMap(step -> check(subject, step).stream())
        .toList();
  }

  private static Optional<Finding> check(Subject subject, DoneStep step) {
    return step.before().stream()
        .flatMap(parcel -> parcel.agents().stream())
        .filter(DepositBelowSetting::gels)
        .max(Comparator.comparing(agent -> agent.traits().sets().orElseThrow()))
        .flatMap(agent -> written(step)
            .map(figure -> told(subject, agent, figure))
            .orElseGet(() -> gelled(step, agent)));
  }

  /** Whether an agent is there for its gel and has taken up its water, as far as anybody can tell. */
  private static boolean gels(Agent agent) {
    return agent.ingredient().hasRole("gelling")
        && agent.traits().sets().isPresent()
        && AgentReport.of(agent).stream()
            .filter(report -> report.need() == AgentReport.Need.HYDRATION)
            .allMatch(report -> report.verdict().isReached());
  }

  private static Optional<Located<Quantity>> written(DoneStep step) {
    return step.step()
        .figure(Connective.ABOVE, Unit.Dimension.TEMPERATURE)
        .or(() -> step.step().figure(Connective.AT, Unit.Dimension.TEMPERATURE));
  }

  private static Optional<Finding> told(Subject subject, Agent agent, Located<Quantity> figure) {
    Temperature sets = agent.traits().sets().orElseThrow();
    TemperatureDifference margin = subject.threshold(Threshold.SETTING_MARGIN);
    Temperature lowest = Temperature.ofCelsius(figure.value().lowInBase().doubleValue());
    if (lowest.compareTo(isSlow(agent) ? sets : sets.plus(margin)) >= 0) {
      return Optional.empty();
    }
    // Five degrees of margin for the rule, and as much again for the way into the mould.
    String enough = Display.celsius(sets.plus(margin.times(2)));
    Finding finding = OtherPlace.fact(
        INFO.at(
                figure.span(),
                "`%s` sets below %s, and the mass may come down to %s",
                agent.name(),
                Display.celsius(sets),
                Display.celsius(lowest))
            .because(
                "gel that is moved once it sets tears, and comes grainy and weak out of the mould"),
        subject,
        agent.name(),
        "sets");
    boolean isSure = lowest.compareTo(sets) < 0 && !isSlow(agent);
    return Optional.of((isSure ? finding : finding.as(Severity.WARNING))
        .withFixes(
            subject.isWrittenHere(figure.span())
                ? List.of(Fix.replace("Write `" + enough + "`", figure.span(), enough))
                : List.of()));
  }

  private static Optional<Finding> gelled(DoneStep step, Agent agent) {
    Temperature sets = agent.traits().sets().orElseThrow();
    return step.before().stream()
        .filter(parcel -> parcel.agents().contains(agent))
        .map(parcel -> parcel.temperature())
        .filter(band -> band.isWhollyBelow(sets) && wasHot(agent, sets) && !isSlow(agent))
        .map(band -> predicted(step, agent, band))
        .findFirst();
  }

  /** Gelatine and its like take hours to set, and are moved while they cool. */
  private static boolean isSlow(Agent agent) {
    return agent
        .traits()
        .melts()
        .filter(melts -> melts.compareTo(SLOW_GEL) <= 0)
        .isPresent();
  }

  private static boolean wasHot(Agent agent, Temperature sets) {
    return agent.met().stream().anyMatch(met -> met.temperature().isWhollyAbove(sets));
  }

  private static Finding predicted(DoneStep step, Agent agent, Band<Temperature> band) {
    return INFO.at(
            step.step().word().span(),
            "`%s` sets below %s, and the mass has about %s here",
            agent.name(),
            Display.celsius(agent.traits().sets().orElseThrow()),
            Display.celsius(band))
        .as(Severity.WARNING)
        .because("gel that is moved once it sets tears; shorten the wait or keep the mass warm");
  }
}
