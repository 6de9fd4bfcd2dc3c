package dev.kettlemark.model;

import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Ratio;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * What a material is made of: the mass fraction of every {@link Component}.
 *
 * <p>The fractions are not negative and sum to one. Two compositions are equal when all their fractions are.
 */
public final class Composition {

  /** Tables print two decimals for up to some thirty components; a larger gap is a mistake, not rounding. */
  private static final double SUM_TOLERANCE = 5e-4;

  private static final List<Component> COMPONENTS = List.of(Component.values());

  private static final int WATER = index(Component.WATER);

  /** Indexed by the ordinal of the component; never handed out. */
  private final double[] fractions;

  /** The ordinals of the components that are present; a sugar has one or two of all. */
  private final int[] present;

  /** The share of each family, indexed by its ordinal. */
  private final double[] families = new double[Component.Family.values().length];

  private Composition(double[] amounts) {
    double total = Arrays.stream(amounts).sum();
    this.fractions = new double[amounts.length];
    int[] found = new int[amounts.length];
    int count = 0;
    for (int i = 0; i < amounts.length; i++) {
      fractions[i] = amounts[i] / total;
      if (fractions[i] > 0) {
        found[count++] = i;
      }
    }
    this.present = Arrays.copyOf(found, count);
    for (int i : present) {
      families[index(COMPONENTS.get(i).family())] += fractions[i];
    }
  }

  /** Returns the composition of a pure component. */
  public static Composition of(Component component) {
    return ofPercents(Map.of(component, 100.0));
  }

  /**
   * Returns the composition with the given percentages by mass.
   *
   * @param percents in percent, not negative; they sum to 100 within 0.05 and are then scaled to sum exactly
   * @throws IllegalArgumentException if a percentage is negative or the sum is off
   */
  public static Composition ofPercents(Map<Component, Double> percents) {
    double sum = percents.values().stream().mapToDouble(Double::doubleValue).sum() / 100;
    if (!(Math.abs(sum - 1) <= SUM_TOLERANCE)) {
      throw new IllegalArgumentException("the percentages must sum to 100, not to " + sum * 100);
    }
    return ofAmounts(percents, Double::doubleValue);
  }

  /**
   * Returns the composition of what the given masses make together.
   *
   * @throws IllegalArgumentException if a mass is negative or all are zero
   */
  public static Composition ofMasses(Map<Component, Mass> masses) {
    return ofAmounts(masses, Mass::kilograms);
  }

  /**
   * Returns the composition of a mixture, weighted by mass.
   *
   * @param portions in any order; at least one weighs something
   * @throws IllegalArgumentException if together they weigh nothing
   */
  public static Composition mix(List<Portion> portions) {
    double[] amounts = new double[COMPONENTS.size()];
    for (Portion portion : portions) {
      double mass = portion.mass().kilograms();
      Composition composition = portion.composition();
      for (int i : composition.present) {
        amounts[i] += mass * composition.fractions[i];
      }
    }
    return checked(amounts);
  }

  /** Returns the mass fraction of one component, from 0 to 1. */
  public double fraction(Component component) {
    return fractions[index(component)];
  }

  /** Returns the share of all components of one family. */
  public Ratio share(Component.Family family) {
    return Ratio.ofFraction(families[index(family)]);
  }

  /** Returns the sum of all fractions, each times the weight of its component. */
  public double weighted(ToDoubleFunction<Component> weight) {
    double sum = 0;
    for (int i : present) {
      sum += fractions[i] * weight.applyAsDouble(COMPONENTS.get(i));
    }
    return sum;
  }

  public Ratio water() {
    return Ratio.ofFraction(fraction(Component.WATER));
  }

  /** Returns all that is not water. */
  public Ratio solids() {
    return Ratio.ofFraction(solidsFraction());
  }

  /** Returns the mono- and disaccharides, which a label calls sugars. */
  public Ratio sugars() {
    return share(Component.Family.SUGAR);
  }

  /** Returns the sugars together with the soluble saccharides of three and more units. */
  public Ratio saccharides() {
    return sugars().plus(share(Component.Family.OLIGOSACCHARIDE));
  }

  /** Returns the saccharides and polyols: the solids that form the syrup of a confection. */
  public Ratio sweetSolids() {
    return saccharides().plus(share(Component.Family.POLYOL));
  }

  /** Tells whether there is anything besides water. */
  public boolean hasSolids() {
    return solidsFraction() > 0;
  }

  /** Returns the solids alone, or nothing for pure water. */
  public Optional<Composition> dry() {
    return hasSolids() ? Optional.of(withWaterFraction(Ratio.ZERO)) : Optional.empty();
  }

  /**
   * Returns the same solids with another share of water.
   *
   * @param water from 0 to 100 %
   * @throws IllegalArgumentException if the share is out of range, or there are no solids to make up the rest
   */
  public Composition withWaterFraction(Ratio water) {
    if (!water.isShare()) {
      throw new IllegalArgumentException(
          "a share of water must lie from 0 to 100 %, not at " + water.percent());
    }
    double solids = solidsFraction();
    if (solids == 0 && !water.equals(Ratio.ONE)) {
      throw new IllegalArgumentException("pure water has no solids to make up the rest");
    }
    double scale = solids > 0 ? water.complement().fraction() / solids : 0;
    double[] amounts =
        Arrays.stream(fractions).map(fraction -> fraction * scale).toArray();
    amounts[WATER] = water.fraction();
    return checked(amounts);
  }

  /**
   * Returns only the components that pass, scaled up to a whole, or nothing if none is present.
   *
   * @param keep tells which components stay
   */
  public Optional<Composition> only(Predicate<Component> keep) {
    double[] amounts = fractions.clone();
    for (int i = 0; i < amounts.length; i++) {
      if (!keep.test(COMPONENTS.get(i))) {
        amounts[i] = 0;
      }
    }
    return Arrays.stream(amounts).sum() > 0
        ? Optional.of(new Composition(amounts))
        : Optional.empty();
  }

  /** Returns the components that are present, in the order of {@link Component}. */
  public List<Component> present() {
    return Arrays.stream(present).mapToObj(COMPONENTS::get).toList();
  }

  // An array by ordinal is what keeps a composition small and a mixture fast; it is never stored
  // outside the process.
  @SuppressWarnings("EnumOrdinal")
  private static int index(Component component) {
    return component.ordinal();
  }

  @SuppressWarnings("EnumOrdinal") // As above.
  private static int index(Component.Family family) {
    return family.ordinal();
  }

  private double solidsFraction() {
    // The sum of the solids, unlike one minus the water, is exactly zero for pure water and exactly
    // one when dry.
    double sum = 0;
    for (int i : present) {
      sum += i == WATER ? 0 : fractions[i];
    }
    return sum;
  }

  private static <V> Composition ofAmounts(Map<Component, V> map, ToDoubleFunction<V> number) {
    double[] amounts = new double[COMPONENTS.size()];
    map.forEach((component, amount) -> amounts[index(component)] = number.applyAsDouble(amount));
    return checked(amounts);
  }

  private static Composition checked(double[] amounts) {
    double total = 0;
    for (double amount : amounts) {
      if (!(amount >= 0)) {
        throw new IllegalArgumentException(
            "a composition must not hold a negative amount: " + amount);
      }
      total += amount;
    }
    if (!(total > 0 && Double.isFinite(total))) {
      throw new IllegalArgumentException("a composition must hold something, not " + total);
    }
    return new Composition(amounts);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Composition that && Arrays.equals(fractions, that.fractions);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(fractions);
  }

  @Override
  public String toString() {
    StringJoiner parts = new StringJoiner(", ");
    present()
        .forEach(component -> parts.add(component.word() + " " + fraction(component) * 100 + " %"));
    return parts.toString();
  }
}
