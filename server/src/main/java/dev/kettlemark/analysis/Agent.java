package dev.kettlemark.analysis;

import dev.kettlemark.model.AgentTraits;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Statement;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A gelling, thickening or whipping agent in a mass, with all the heat it has met.
 *
 * @param line the name on the amount line that weighs it in
 * @param stage where that line stands
 * @param ingredient its pantry entry
 * @param traits what it asks for
 * @param mass how much of it
 * @param met the steps that the mass around it went through, in order
 */
public record Agent(
    Located<String> line,
    String stage,
    Ingredient ingredient,
    AgentTraits traits,
    Mass mass,
    List<Met> met) {

  /** A stage has fewer steps than this; beyond it the oldest are forgotten. */
  private static final int MOST_MET = 100;

  public Agent {
    met = List.copyOf(met);
  }

  /**
   * One step that the mass around an agent went through.
   *
   * @param stage where the step stands
   * @param step the step
   * @param temperature of the mass after it
   * @param seconds for how long, where the step says so
   * @param solubleSolids sugars and polyols, of themselves and the water together
   * @param water in the mass around it
   * @param boiled whether the mass boiled
   */
  public record Met(
      String stage,
      Statement step,
      Band<Temperature> temperature,
      Optional<Double> seconds,
      Outcome<Ratio> solubleSolids,
      Outcome<Mass> water,
      boolean boiled) {}

  public String name() {
    return line.value();
  }

  Agent after(Met next) {
    List<Met> all = new ArrayList<>(met);
    all.add(next);
    return with(mass, all.size() > MOST_MET ? all.subList(1, all.size()) : all);
  }

  Agent part(double share) {
    return with(mass.times(share), met);
  }

  private Agent with(Mass other, List<Met> all) {
    return new Agent(line, stage, ingredient, traits, other, all);
  }
}
