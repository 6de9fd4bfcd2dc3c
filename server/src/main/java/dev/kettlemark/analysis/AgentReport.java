package dev.kettlemark.analysis;

import dev.kettlemark.analysis.Agent.Met;
import dev.kettlemark.model.AgentTraits;
import dev.kettlemark.model.AgentTraits.Condition;
import dev.kettlemark.model.State;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Temperature;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Whether an agent got one of the things that it asks for.
 *
 * @param agent the agent
 * @param need what it asks for
 * @param verdict whether it got that
 * @param best the step that came closest; empty where no step touched it
 */
public record AgentReport(Agent agent, Need need, Verdict verdict, Optional<Met> best) {

  /** Gelatine that is warmer than this before it has swollen dissolves in lumps; common practice, no source. */
  private static final Temperature SOAK_BELOW = Temperature.ofCelsius(40);

  /** What agents ask for, in the order in which they ask. */
  public enum Need {
    SOAK("swell in cold liquid"),
    HYDRATION("take up water"),
    BOIL("boil"),
    ACTIVATION("get hot enough to work"),
    COAGULATION("set with heat"),
    SETTING("cool until it gels");

    private final String words;

    Need(String words) {
      this.words = words;
    }

    /** The need as words that follow "to". */
    public String words() {
      return words;
    }
  }

  /** Whether a need was met. */
  public enum Verdict {
    /** Wholly, as far as the model and the text can tell. */
    REACHED,
    /** The temperature was right, and no step says for how long. */
    TIME_UNSAID,
    /** The temperature was right, but not for long enough. */
    TOO_SHORT,
    /** The temperature was right, but sugar held the water back. */
    TOO_MUCH_SUGAR,
    /** Part of the predicted temperature band is right. */
    PERHAPS,
    /** No step came to the temperature. */
    NOT_REACHED;

    /** Whether the agent can be counted on, time apart. */
    public boolean isReached() {
      return this == REACHED || this == TIME_UNSAID;
    }
  }

  /** Everything that an agent asks for, with whether it got it. */
  public static List<AgentReport> of(Agent agent) {
    AgentTraits traits = agent.traits();
    List<AgentReport> reports = new ArrayList<>();
    if (traits.needs().contains("soak")) {
      reports.add(soak(agent));
    }
    traits.hydrates().ifPresent(c -> reports.add(condition(agent, Need.HYDRATION, c)));
    if (traits.needs().contains("boil")) {
      reports.add(boil(agent));
    }
    traits.activates().ifPresent(c -> reports.add(condition(agent, Need.ACTIVATION, c)));
    traits.coagulates().ifPresent(c -> reports.add(condition(agent, Need.COAGULATION, c)));
    traits.sets().ifPresent(limit -> reports.add(setting(agent, limit)));
    return reports;
  }

  /** Whether the agent has taken up its water for certain; true where it asks for nothing. */
  static boolean isHydrated(Agent agent) {
    return agent
        .traits()
        .hydrates()
        .map(c -> condition(agent, Need.HYDRATION, c).verdict().isReached())
        .orElse(true);
  }

  private static AgentReport condition(Agent agent, Need need, Condition condition) {
    List<Met> right =
        agent.met().stream().filter(met -> condition.isMetBy(met.temperature())).toList();
    if (right.isEmpty()) {
      boolean may = agent.met().stream().anyMatch(met -> condition.mayBeMetBy(met.temperature()));
      return new AgentReport(
          agent, need, may ? Verdict.PERHAPS : Verdict.NOT_REACHED, closest(agent, condition));
    }
    List<Met> free = right.stream().filter(met -> hasFreeWater(met, condition)).toList();
    if (free.isEmpty()) {
      return new AgentReport(agent, need, Verdict.TOO_MUCH_SUGAR, Optional.of(right.get(0)));
    }
    return new AgentReport(agent, need, longEnough(free, condition), Optional.of(free.get(0)));
  }

  private static Verdict longEnough(List<Met> right, Condition condition) {
    if (condition.seconds().isEmpty()) {
      return Verdict.REACHED;
    }
    double said = right.stream().mapToDouble(met -> met.seconds().orElse(0.0)).sum();
    if (said >= condition.seconds().get()) {
      return Verdict.REACHED;
    }
    boolean allSaid = right.stream().allMatch(met -> met.seconds().isPresent());
    return allSaid ? Verdict.TOO_SHORT : Verdict.TIME_UNSAID;
  }

  private static boolean hasFreeWater(Met met, Condition condition) {
    return condition
        .mostSolids()
        .flatMap(most ->
            met.solubleSolids().map(solids -> solids.compareTo(most) <= 0).toOptional())
        .orElse(true);
  }

  private static Optional<Met> closest(Agent agent, Condition condition) {
    Comparator<Met> byHeat = condition.above()
        ? Comparator.comparing(met -> met.temperature().high())
        : Comparator.comparing((Met met) -> met.temperature().low()).reversed();
    return agent.met().stream().max(byHeat);
  }

  private static AgentReport soak(Agent agent) {
    for (Met met : agent.met()) {
      boolean isHot = met.temperature().low().compareTo(SOAK_BELOW) > 0;
      if (isHot) {
        return new AgentReport(agent, Need.SOAK, Verdict.NOT_REACHED, Optional.of(met));
      }
      boolean soaks = Verb.of(met.step().word().value())
              .filter(verb -> verb == Verb.SOAK || verb == Verb.HYDRATE || verb == Verb.STAND)
              .isPresent()
          || Contents.reached(met.step()).contains(State.BLOOMED);
      if (soaks) {
        return new AgentReport(agent, Need.SOAK, Verdict.REACHED, Optional.of(met));
      }
    }
    return new AgentReport(agent, Need.SOAK, Verdict.NOT_REACHED, Optional.empty());
  }

  private static AgentReport boil(Agent agent) {
    Optional<Met> boiled = agent.met().stream().filter(Met::boiled).findFirst();
    return boiled.isPresent()
        ? new AgentReport(agent, Need.BOIL, Verdict.REACHED, boiled)
        : new AgentReport(
            agent,
            Need.BOIL,
            Verdict.NOT_REACHED,
            agent.met().stream()
                .max(Comparator.comparing(met -> met.temperature().high())));
  }

  private static AgentReport setting(Agent agent, Temperature limit) {
    Optional<Met> last = agent.met().isEmpty()
        ? Optional.empty()
        : Optional.of(agent.met().get(agent.met().size() - 1));
    Verdict verdict = last.map(Met::temperature)
        .map(band -> band.high().compareTo(limit) <= 0
            ? Verdict.REACHED
            : band.low().compareTo(limit) <= 0 ? Verdict.PERHAPS : Verdict.NOT_REACHED)
        .orElse(Verdict.NOT_REACHED);
    return new AgentReport(agent, Need.SETTING, verdict, last);
  }
}
