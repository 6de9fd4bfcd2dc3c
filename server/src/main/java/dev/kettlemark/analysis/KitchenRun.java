package dev.kettlemark.analysis;

import dev.kettlemark.model.AgentTraits;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.TakeLine;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.quantity.Volume;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * Follows a formula through its stages, one after the other, as a cook would.
 *
 * <p>Every mass that goes in comes out again: in what a stage leaves, in what evaporates, or as left
 * over.
 */
final class KitchenRun {

  private final Kitchen kitchen;
  private final Map<String, Material> materials;
  private final List<StageResult> results = new ArrayList<>();

  /** Share of each stage's mass that no later stage has taken yet. */
  private final List<Double> untaken = new ArrayList<>();

  /** Index of the last stage of each name. */
  private final Map<String, Integer> latest = new HashMap<>();

  private KitchenRun(Kitchen kitchen, Map<String, Material> materials) {
    this.kitchen = kitchen;
    this.materials = materials;
  }

  /**
   * Runs a formula with a charge.
   *
   * <p>Lines whose share is unknown weigh nothing; a negative rest likewise.
   *
   * @param materials what the names of the amount lines mean
   */
  static ProcessResult of(
      Formula formula,
      Amounts amounts,
      Map<String, Material> materials,
      Kitchen kitchen,
      Mass charge) {
    List<Mass> masses = amounts.lines().stream()
        .map(line -> line.share().orElse(BigFraction.ZERO).doubleValue())
        .map(share -> charge.times(Math.max(0, share)))
        .toList();
    return new KitchenRun(kitchen, materials).run(formula, masses);
  }

  private ProcessResult run(Formula formula, List<Mass> masses) {
    Mass charge = Mass.ZERO;
    Mass evaporated = Mass.ZERO;
    int line = 0;
    for (Stage stage : formula.stages()) {
      int lines = stage.amounts().size();
      StageResult result = run(stage, masses.subList(line, line + lines));
      line += lines;
      charge = charge.plus(result.weighed());
      evaporated = evaporated.plus(result.evaporated());
      latest.put(result.name(), results.size());
      results.add(result);
      untaken.add(1.0);
    }
    return new ProcessResult(new ChargeWeight(charge), results, evaporated, leftOver());
  }

  private StageResult run(Stage stage, List<Mass> masses) {
    List<StageParcel> parcels = new ArrayList<>();
    Mass weighed = Mass.ZERO;
    for (int i = 0; i < masses.size(); i++) {
      parcels.add(weighed(stage, stage.amounts().get(i), masses.get(i)));
      weighed = weighed.plus(masses.get(i));
    }
    Mass charged = weighed;
    Outcome<Mass> taken = Outcome.known(Mass.ZERO);
    for (TakeLine take : stage.takes()) {
      StageParcel part = take(take);
      parcels.add(part);
      taken = Outcome.both(taken, part.mass(), Mass::plus);
      charged = charged.plus(chargedIn(take));
    }
    Contents contents = new Contents(stage, kitchen, parcels);
    List<StepResult> steps = new ArrayList<>();
    Mass evaporated = Mass.ZERO;
    for (Statement step : stage.steps()) {
      StepResult result = contents.apply(step);
      steps.add(result);
      evaporated = evaporated.plus(result.evaporated());
    }
    Meeting left = contents.together();
    return new StageResult(
        stage,
        weighed,
        charged,
        taken,
        steps,
        evaporated.plus(left.steam()),
        left.merged(),
        contents.parcels());
  }

  private StageParcel weighed(Stage stage, AmountLine line, Mass mass) {
    String name = line.ingredient().value();
    Temperature temperature = line.at().map(t -> t.value()).orElse(kitchen.room());
    Optional<Material> material = Optional.ofNullable(materials.get(name));
    StageParcel plain =
        StageParcel.plain(name, Outcome.known(mass), composition(name), temperature);
    return material
        .flatMap(Material::made)
        .map(made -> madeBefore(made, plain, mass))
        .orElseGet(() -> plain.withAgents(
            material.stream().flatMap(m -> agent(m, line, stage, mass).stream()).toList()));
  }

  private static Optional<Agent> agent(Material material, AmountLine line, Stage stage, Mass mass) {
    return material
        .agent()
        .filter(AgentTraits::saysHow)
        .flatMap(traits -> material
            .ingredient()
            .map(ingredient -> new Agent(
                line.ingredient(), stage.name().value(), ingredient, traits, mass, List.of())));
  }

  /** What another formula makes comes with its air and its states, by now at the room's temperature. */
  private static StageParcel madeBefore(StageParcel made, StageParcel plain, Mass mass) {
    double whole = made.mass().map(Mass::grams).orElse(0.0);
    Outcome<Band<Volume>> air = whole > 0
        ? made.air()
            .map(band -> new Band<>(
                band.low().times(mass.grams() / whole), band.high().times(mass.grams() / whole)))
        : Air.NONE;
    return plain.with(made.states().stream().toList()).withAir(air);
  }

  private Mass chargedIn(TakeLine take) {
    Integer source = latest.get(take.stage().value());
    return source == null
        ? Mass.ZERO
        : results.get(source).charged().times(take.share().doubleValue());
  }

  private Outcome<Composition> composition(String name) {
    Material material = materials.get(name);
    return material == null
        ? Outcome.unknown(Reason.MISSING_COMPOSITION, "nobody has described `%s`", name)
        : material.composition();
  }

  /** Hands over a part of what an earlier stage left; never more than is there. */
  private StageParcel take(TakeLine take) {
    String name = take.stage().value();
    Integer source = latest.get(name);
    if (source == null) {
      return StageParcel.plain(
          name,
          Outcome.unknown(Reason.MISSING_FIGURE, "no earlier stage leaves `%s`", name),
          Outcome.unknown(Reason.MISSING_COMPOSITION, "no earlier stage leaves `%s`", name),
          kitchen.room());
    }
    double share = Math.min(untaken.get(source), take.share().doubleValue());
    untaken.set(source, untaken.get(source) - share);
    return results.get(source).left().named(name).part(share);
  }

  /** What nobody took; two stages of one name count together. */
  private Map<String, Outcome<Mass>> leftOver() {
    Map<String, Outcome<Mass>> left = new LinkedHashMap<>();
    for (int i = 0; i < results.size() - 1; i++) {
      double share = untaken.get(i);
      if (share > 0) {
        StageResult result = results.get(i);
        left.merge(
            result.name(),
            result.left().mass().map(mass -> mass.times(share)),
            (one, other) -> Outcome.both(one, other, Mass::plus));
      }
    }
    return left;
  }
}
