package dev.kettlemark.answers;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.Boiling;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Experiment.StepPlace;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.TakeLine;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Derivation;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Remark;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.HeatBalance;
import dev.kettlemark.science.SyrupBoiling;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import org.hipparchus.fraction.BigFraction;

/** Searches each way in which a hot mass can bring an agent to its temperature. */
final class ReachSearch {

  /** A bowl is warmed with hot water or a torch, and held by hand; an own choice. */
  private static final double WARMEST_BOWL = 95;

  /** So much of the cold mass at most is exchanged for syrup; beyond it is another formula. */
  private static final double MOST_MOVED = 0.6;

  /** Shares that do not sum to the whole by more than this are no longer the same charge. */
  private static final double TOTAL_ERROR = 2e-4;

  private final ComputedFormula formula;
  private final AgentHeat heat;
  private final StepPlace meeting;
  private final Set<String> carriers;
  private final StageParcel hot;

  ReachSearch(ComputedFormula formula, AgentHeat heat) {
    this.formula = formula;
    this.heat = heat;
    this.meeting = heat.meeting().orElseThrow().place();
    this.carriers = AgentHeat.carriers(formula, heat.agent()).get(meeting.stage());
    this.hot = AgentHeat.hot(CookPlaces.step(formula, meeting), carriers).orElseThrow();
  }

  Outcome<Answer> hotterSyrup() {
    return heatGiving()
        .flatMap(place -> settable(place).flatMap(range -> {
          String name = name(place);
          DoubleFunction<List<Change>> change =
              celsius -> List.of(new Change.Cook(place, Temperature.ofCelsius(celsius)));
          boolean cooks = Verb.of(step(place).word().value())
              .filter(verb -> verb.effect() == Verb.Effect.HEAT)
              .isEmpty();
          return searched(
                  range,
                  change,
                  0.1,
                  Display.celsius(range.low()) + " to " + Display.celsius(range.high()))
              .map(found -> {
                Temperature target = Temperature.ofCelsius(found);
                return answer(
                    (cooks ? "Cook " : "Bring ") + name + " to " + Display.celsius(target),
                    Value.of("temperature", target),
                    change.apply(found),
                    CookTemperature.cautions(target));
              });
        }));
  }

  Outcome<Answer> moreSyrup() {
    Set<Integer> hotLines = linesOf(hot.names(), meeting.stage());
    Set<Integer> coldLines = linesOf(carriers, meeting.stage());
    coldLines.removeIf(line -> Exchanges.name(formula, line).equals(heat.agent()));
    double hotShare = total(hotLines);
    double coldShare = total(coldLines);
    if (hotShare <= 0 || coldShare <= 0) {
      return Outcome.unknown(
          Reason.NO_SOLUTION, "nothing but `%s` itself meets the hot mass", heat.agent());
    }
    DoubleFunction<List<Change>> change = moved -> {
      List<Change> changes = new ArrayList<>();
      scale(hotLines, 1 + moved / hotShare, changes);
      scale(coldLines, 1 - moved / coldShare, changes);
      return changes;
    };
    double most = coldShare * MOST_MOVED;
    return searched(0, most, change, 0.001, "up to " + percent(most) + " of the charge moved")
        .flatMap(moved -> isWhole(change.apply(moved))
            ? Outcome.known(answer(
                "Move " + percent(moved) + " of the charge from what meets it to "
                    + String.join(", ", hot.names()),
                Value.exact("moved", Ratio.ofFraction(moved)),
                change.apply(moved),
                List.of()))
            : Outcome.unknown(
                Reason.CONTRADICTION,
                "other amounts hang on those that would move, and no water fills up the rest"));
  }

  Outcome<Answer> warmerBowl() {
    Stage stage = formula.formula().stages().get(meeting.stage());
    Optional<String> vessel = stage.vessel().map(name -> name.value());
    boolean isKnown =
        vessel.flatMap(formula.kitchen()::vessel).flatMap(House.Vessel::weighs).isPresent();
    if (!isKnown) {
      return Outcome.unknown(
          Reason.MISSING_FIGURE,
          "`%s` names no bowl, or the house does not say what the bowl weighs",
          stage.name().value());
    }
    String bowl = vessel.orElseThrow();
    double room = formula.kitchen().temperatureOf(bowl).celsius();
    DoubleFunction<List<Change>> change =
        celsius -> List.of(new Change.Warm(bowl, Temperature.ofCelsius(celsius)));
    return searched(
            new Band<>(Temperature.ofCelsius(room), Temperature.ofCelsius(WARMEST_BOWL)),
            change,
            1,
            "a bowl of " + Display.trimmed(room, 0) + " to " + Display.trimmed(WARMEST_BOWL, 0)
                + " °C")
        .map(celsius -> {
          Temperature warm = Temperature.ofCelsius(celsius);
          return answer(
              "Warm " + bowl + " to " + Display.celsius(warm) + " before they meet",
              Value.of("bowl-temperature", warm),
              change.apply(celsius),
              List.of());
        });
  }

  private Outcome<Double> searched(
      Band<Temperature> range, DoubleFunction<List<Change>> change, double step, String told) {
    return searched(range.low().celsius(), range.high().celsius(), change, step, told);
  }

  /** The least setting, up to the next step, at which the low end reaches what is needed. */
  private Outcome<Double> searched(
      double low, double high, DoubleFunction<List<Change>> change, double step, String told) {
    double needed = heat.needed().celsius();
    Search search = new Search(low, high, setting -> lowEnd(change.apply(setting)));
    return search.reach().flatMap(reach -> {
      if (!reach.holds(needed)) {
        return Outcome.unknown(
            Reason.NO_SOLUTION,
            "%s gives %s to %s where they meet, and `%s` needs %s",
            told,
            Display.celsius(Temperature.ofCelsius(reach.least())),
            Display.celsius(Temperature.ofCelsius(reach.most())),
            heat.agent(),
            Display.celsius(heat.needed()));
      }
      return search.settingFor(needed).flatMap(found -> stepped(found, step, high, change));
    });
  }

  /** Rounding of amounts may lose a trace of heat; a few steps more bring it back. */
  private Outcome<Double> stepped(
      double found, double step, double high, DoubleFunction<List<Change>> change) {
    double setting = Math.ceil(found / step - 1e-9) * step;
    for (int i = 0; i < 5 && setting <= high + step; i++) {
      boolean reaches = lowEnd(change.apply(setting))
          .toOptional()
          .filter(celsius -> celsius >= heat.needed().celsius() - 1e-6)
          .isPresent();
      if (reaches) {
        return Outcome.known(Math.round(setting / step) * step);
      }
      setting += step;
    }
    return Outcome.unknown(Reason.NO_SOLUTION, "no setting that can be written reaches it");
  }

  /** The low end where they meet; each way only raises it. */
  private Outcome<Double> lowEnd(List<Change> changes) {
    ComputedFormula after = Change.tried(formula, changes);
    return CookPlaces.step(after, meeting)
        .merged()
        .map(band -> Outcome.known(band.low().celsius()))
        .orElseGet(() -> Outcome.unknown(
            Reason.DEPENDS_ON_UNKNOWN, "no heat balance can be drawn up where they meet"));
  }

  private Answer answer(String what, Value setting, List<Change> changes, List<Remark> notes) {
    ComputedFormula after = Change.tried(formula, changes);
    StepResult step = CookPlaces.step(after, meeting);
    Band<Temperature> band = step.merged().orElseThrow();
    List<Value> values = new ArrayList<>();
    values.add(setting);
    values.add(Value.of("temperature-where-they-meet", band.low(), band));
    values.add(Value.of("temperature-needed", heat.needed()));
    values.addAll(CookTemperature.outcome(after, meeting.stage()));
    List<Derivation> inputs = new ArrayList<>();
    inputs.add(Derivation.given(
        "needed by " + heat.agent(),
        Display.celsius(heat.needed()),
        "its " + heat.fact().word().value() + " fact"));
    inputs.add(Derivation.given(
        "as it stands",
        Display.celsius(heat.meeting().orElseThrow().temperature()),
        "the heat balance"));
    step.derivation().ifPresent(inputs::add);
    return new Answer(
        what + ": " + heat.agent() + " gets " + Display.celsius(band),
        values,
        changes,
        notes,
        HeatBalance.EQUATION.derive(setting.shown(), inputs));
  }

  /** The step that gave the hot mass its heat. */
  private Outcome<StepPlace> heatGiving() {
    List<StepResult> here = formula.process().stages().get(meeting.stage()).steps();
    for (int j = meeting.step() - 1; j >= 0; j--) {
      if (sets(here.get(j).step())
          && here.get(j).after().stream().anyMatch(p -> p.names().equals(hot.names()))) {
        return Outcome.known(new StepPlace(meeting.stage(), j));
      }
    }
    for (TakeLine take : formula.formula().stages().get(meeting.stage()).takes()) {
      if (hot.holds(take.stage().value())) {
        Optional<StepPlace> place = lastHeat(take.stage().value());
        if (place.isPresent()) {
          return Outcome.known(place.get());
        }
      }
    }
    return Outcome.unknown(
        Reason.NOT_MODELLED,
        "no cook or warming gives `%s` its heat",
        String.join(", ", hot.names()));
  }

  private Optional<StepPlace> lastHeat(String stageName) {
    for (int i = meeting.stage() - 1; i >= 0; i--) {
      if (!formula.process().stages().get(i).name().equals(stageName)) {
        continue;
      }
      List<StepResult> steps = formula.process().stages().get(i).steps();
      for (int j = steps.size() - 1; j >= 0; j--) {
        if (sets(steps.get(j).step())) {
          return Optional.of(new StepPlace(i, j));
        }
      }
      return Optional.empty();
    }
    return Optional.empty();
  }

  private static boolean sets(Statement step) {
    Verb.Effect effect = Verb.of(step.word().value()).map(Verb::effect).orElse(Verb.Effect.NONE);
    return switch (effect) {
      case COOK -> Boiling.target(step).isPresent();
      case BOIL -> step.figure(Connective.TO, Unit.Dimension.TEMPERATURE).isPresent();
      case HEAT ->
        step.figure(Connective.TO, Unit.Dimension.TEMPERATURE).isPresent()
            || step.figure(Connective.AT, Unit.Dimension.TEMPERATURE).isPresent()
            || step.figure(Connective.BELOW, Unit.Dimension.TEMPERATURE).isPresent();
      default -> false;
    };
  }

  /** From what is written up to the end of the boiling model, or for a warming to the boil. */
  private Outcome<Band<Temperature>> settable(StepPlace place) {
    Temperature now = hot.temperature().low();
    boolean boils = Verb.of(step(place).word().value())
        .filter(verb -> verb.effect() != Verb.Effect.HEAT)
        .isPresent();
    Outcome<Temperature> most = boils
        ? CookTemperature.range(formula, place).map(Band::high)
        : hot.composition()
            .flatMap(mass -> SyrupBoiling.boilingPoint(mass, formula.kitchen().pressure()));
    return most.flatMap(high -> high.compareTo(now) > 0
        ? Outcome.known(new Band<>(now, high))
        : Outcome.unknown(Reason.NO_SOLUTION, "`%s` cannot get any hotter", name(place)));
  }

  private Statement step(StepPlace place) {
    return CookPlaces.step(formula, place).step();
  }

  private String name(StepPlace place) {
    return place.stage() == meeting.stage()
        ? String.join(", ", hot.names())
        : CookPlaces.stageName(formula, place);
  }

  /** The amount lines of what goes by these names in a stage: its own lines, and all of taken stages. */
  private Set<Integer> linesOf(Set<String> names, int stage) {
    Set<Integer> found = new HashSet<>();
    List<LineAmount> lines = formula.amounts().lines();
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).stage() == stage
          && names.contains(lines.get(i).line().ingredient().value())) {
        found.add(i);
      }
    }
    for (TakeLine take : formula.formula().stages().get(stage).takes()) {
      if (names.contains(take.stage().value())) {
        addStage(take.stage().value(), stage, found);
      }
    }
    return found;
  }

  private void addStage(String name, int before, Set<Integer> found) {
    List<Stage> stages = formula.formula().stages();
    for (int i = before - 1; i >= 0; i--) {
      if (stages.get(i).name().value().equals(name)) {
        List<LineAmount> lines = formula.amounts().lines();
        for (int line = 0; line < lines.size(); line++) {
          if (lines.get(line).stage() == i) {
            found.add(line);
          }
        }
        for (TakeLine take : stages.get(i).takes()) {
          addStage(take.stage().value(), i, found);
        }
        return;
      }
    }
  }

  /** What can be moved: amounts of their own, and the line that fills up. */
  private double total(Set<Integer> lines) {
    return lines.stream()
        .map(line -> formula.amounts().lines().get(line))
        .filter(line -> Figure.isFree(formula, line)
            || line.line().measure().value() instanceof Measure.Sufficient)
        .mapToDouble(line -> line.share().orElse(BigFraction.ZERO).doubleValue())
        .sum();
  }

  private void scale(Set<Integer> lines, double factor, List<Change> changes) {
    for (int line : lines.stream().sorted().toList()) {
      LineAmount amount = formula.amounts().lines().get(line);
      if (Figure.isFree(formula, amount)) {
        BigFraction share = amount.share().orElse(BigFraction.ZERO);
        changes.add(new Change.Weigh(
            line, Figure.rounded(amount, share.multiply(Exchanges.exact(factor)))));
      }
    }
  }

  private boolean isWhole(List<Change> changes) {
    double before = formula.amounts().total().doubleValue();
    double after = Change.tried(formula, changes).amounts().total().doubleValue();
    return Math.abs(after - before) < TOTAL_ERROR;
  }

  private static String percent(double share) {
    return Display.trimmed(share * 100, 1) + " %";
  }
}
