package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Portion;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import java.util.EnumMap;
import java.util.Map;

/**
 * Splits sucrose into glucose and fructose, by a known degree or as acid does during a boil.
 *
 * <p>Equations: sucrose + water → glucose + fructose, 342.297 + 18.015 = 2 × 180.156; degree by cream of tartar I =
 * 50·d within a factor of two.
 *
 * <p>Symbols: I share of the sucrose that is split; d cream of tartar as a share of the sugar.
 *
 * <p>Range: degree 0–100 %; cream of tartar 0.05–0.5 % of the sugar in an ordinary open boil.
 *
 * <p>Expected error: the split is exact; the degree by acid is good to a factor of two, since it doubles every few °C and
 * grows tenfold per unit of pH.
 *
 * <p>Source: [1] stoichiometry. [2] Common practice, no source: 0.1–0.3 % of tartar gives some 5–15 % inversion.
 */
public final class Inversion {

  /** Names the mass balance in a derivation. */
  public static final Equation EQUATION = new Equation(
      "invert from sucrose",
      "1 g sucrose + 0.0526 g water → 1.0526 g invert",
      "stoichiometry",
      Confidence.EXACT);

  /** Names the rule for acid in a derivation. */
  public static final Equation BY_ACID = new Equation(
      "inversion by cream of tartar",
      "degree = 50 × share of tartar on sugar, within a factor of two",
      "common practice, no source",
      Confidence.RULE_OF_THUMB);

  private static final Ratio LEAST_TARTAR = Ratio.ofPercent(0.05);
  private static final Ratio MOST_TARTAR = Ratio.ofPercent(0.5);
  private static final double DEGREE_PER_TARTAR = 50;
  private static final double FACTOR = 2;

  private Inversion() {}

  /**
   * Returns the portion after part of its sucrose has been split; the mass stays the same.
   *
   * @param degree share of the sucrose that is split, 0 to 100 %
   */
  public static Outcome<Portion> of(Portion portion, Ratio degree) {
    if (!degree.isShare()) {
      return Outcome.unknown(
          Reason.CONTRADICTION, "%.0f %% is no degree of inversion", degree.percent());
    }
    Mass split = portion.massOf(Component.SUCROSE).times(degree);
    Mass eachSugar = split.times(Solutes.HEXOSE_GRAMS_PER_MOLE / Solutes.SUCROSE_GRAMS_PER_MOLE);
    Mass water = eachSugar.plus(eachSugar).minus(split);
    if (water.compareTo(portion.massOf(Component.WATER)) > 0) {
      return Outcome.unknown(
          Reason.CONTRADICTION,
          "inversion takes up %.1f g of water, more than there is",
          water.grams());
    }
    Map<Component, Mass> masses = new EnumMap<>(Component.class);
    portion
        .composition()
        .present()
        .forEach(component -> masses.put(component, portion.massOf(component)));
    masses.computeIfPresent(Component.SUCROSE, (sucrose, mass) -> mass.minus(split));
    masses.computeIfPresent(Component.WATER, (liquid, mass) -> mass.minus(water));
    masses.merge(Component.GLUCOSE, eachSugar, Mass::plus);
    masses.merge(Component.FRUCTOSE, eachSugar, Mass::plus);
    return Outcome.known(new Portion(portion.mass(), Composition.ofMasses(masses)));
  }

  /**
   * Returns the share of sucrose that cream of tartar splits in an ordinary open boil.
   *
   * @param tartar as a share of the sugar, 0.05 to 0.5 %
   */
  public static Outcome<Band<Ratio>> byCreamOfTartar(Ratio tartar) {
    if (tartar.compareTo(LEAST_TARTAR) < 0 || tartar.compareTo(MOST_TARTAR) > 0) {
      return Outcome.unknown(
          Reason.OUTSIDE_VALID_RANGE,
          "%.2f %% cream of tartar on the sugar lies outside 0.05 to 0.5 %%",
          tartar.percent());
    }
    Ratio usual = tartar.times(DEGREE_PER_TARTAR);
    return Outcome.known(new Band<>(usual.times(1 / FACTOR), usual.times(FACTOR)));
  }
}
