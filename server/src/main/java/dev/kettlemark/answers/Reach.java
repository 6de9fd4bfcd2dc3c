package dev.kettlemark.answers;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Experiment.StepPlace;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Remark;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds how an agent gets as hot as it needs, in three ways: a hotter syrup, more syrup, a warmer bowl.
 *
 * <p>Each way makes the low end of the temperature, with bowl and loss counted, reach what the agent
 * asks for.
 *
 * @param heat how hot the agent gets as the formula stands
 * @param ways the three ways, each with its answer or the reason why there is none
 * @param remarks what else the agent needs, and may not have
 */
public record Reach(AgentHeat heat, List<Way> ways, List<Remark> remarks) {

  /** One way, by the word for it. */
  public record Way(String word, Outcome<Answer> answer) {}

  public Reach {
    ways = List.copyOf(ways);
    remarks = List.copyOf(remarks);
  }

  /** What else the agent needs, in English. */
  public List<String> notes() {
    return Remark.english(remarks);
  }

  /** Looks for the three ways; none where the agent gets hot enough as it is. */
  public static Outcome<Reach> of(ComputedFormula formula, String agent) {
    return AgentHeat.of(formula, agent).flatMap(heat -> {
      if (heat.isEnough()) {
        return Outcome.known(new Reach(heat, List.of(), notes(formula, heat)));
      }
      if (heat.meeting().isEmpty()) {
        return Outcome.unknown(
            Reason.NO_SOLUTION,
            "`%s` needs %s, and no step brings it together with something hot; it gets to %s",
            agent,
            Display.celsius(heat.needed()),
            heat.hottest()
                .map(seen -> Display.celsius(seen.temperature()))
                .orElse("room temperature"));
      }
      ReachSearch search = new ReachSearch(formula, heat);
      return Outcome.known(new Reach(
          heat,
          List.of(
              new Way("hotter-syrup", search.hotterSyrup()),
              new Way("more-syrup", search.moreSyrup()),
              new Way("warmer-bowl", search.warmerBowl())),
          notes(formula, heat)));
    });
  }

  /** Solids above the fact's own limit keep water from the agent, however hot it is. */
  private static List<Remark> notes(ComputedFormula formula, AgentHeat heat) {
    List<Remark> notes = new ArrayList<>();
    Optional<Ratio> most = heat.fact()
        .figure(Connective.BELOW, Unit.Dimension.SHARE)
        .map(figure -> Ratio.ofFraction(figure.value().highInBase().doubleValue()));
    Optional<StepPlace> place = heat.meeting().or(heat::hottest).map(AgentHeat.Seen::place);
    if (most.isPresent() && place.isPresent()) {
      CookPlaces.mass(CookPlaces.step(formula, place.get()).after()).ifKnown(mass -> {
        if (mass.solids().compareTo(most.get()) > 0) {
          notes.add(Remark.of(
              "`%s` hydrates below %s %% solids, and the mass holds %s; hydrate it in water before they meet",
              heat.agent(),
              Display.trimmed(most.get().percent(), 1),
              Display.estimate(mass.solids())));
        }
      });
    }
    heat.fact()
        .figure(Connective.FOR, Unit.Dimension.TIME)
        .ifPresent(time -> notes.add(Remark.of(
            "it must stay that hot for %s",
            Display.duration(time.value().highInBase().doubleValue()))));
    return notes;
  }
}
