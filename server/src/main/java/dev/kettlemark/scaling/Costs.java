package dev.kettlemark.scaling;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/**
 * What materials cost, by the prices that a house pays and those of its pantry.
 *
 * <p>Only materials are counted: no work, energy, rent or packing.
 */
public final class Costs {

  /** Tap water is not bought by weight. */
  private static final double WATER = 0.998;

  /** A formula that is a material of another one is costed by this charge. */
  private static final BigFraction KILOGRAM = new BigFraction(1000);

  private final Snapshot snapshot;
  private final Optional<House> house;

  public Costs(Snapshot snapshot, Optional<House> house) {
    this.snapshot = snapshot;
    this.house = house;
  }

  /** The currency of the house, as it writes it. */
  public Optional<String> currency() {
    return house.flatMap(home -> home.facts().wordOf("currency")).map(Located::value);
  }

  /** All that is weighed in for a batch, what boils away and what is lost included. */
  public Cost ofBatch(Scaling scaling) {
    return ofBatch(scaling, new HashSet<>());
  }

  /** A mass of something that is bought, or made by a formula of its own. */
  public Cost of(String material, Mass mass) {
    return perGram(material, new HashSet<>()).times(mass.grams());
  }

  /**
   * All pieces of a product: the batches of what is made, and what stays on the pieces of what is bought.
   *
   * <p>What is needed only on top, such as the bath that coats the pieces, comes back and costs nothing.
   */
  public Cost ofPieces(ComputedProduct product) {
    Cost all = Cost.NOTHING;
    for (ComputedProduct.Need need : product.needs()) {
      all =
          all.plus(need.scaling().map(this::ofBatch).orElse(of(need.material(), need.onPieces())));
    }
    return all;
  }

  private Cost ofBatch(Scaling scaling, Set<String> within) {
    Cost all = Cost.NOTHING;
    for (WeighingLine line : scaling.weighing().lines()) {
      all = all.plus(perGram(line.ingredient(), within).times(line.grams().doubleValue()));
    }
    return all;
  }

  private Cost perGram(String material, Set<String> within) {
    Optional<Ingredient> ingredient = ingredient(material);
    Optional<Cost> priced = housePrice(material)
        .or(() -> ingredient.flatMap(one -> one.facts().first("price")))
        .flatMap(line -> price(line, ingredient));
    if (priced.isPresent()) {
      return priced.get();
    }
    if (ingredient.filter(Costs::isWater).isPresent()) {
      return Cost.NOTHING;
    }
    boolean isNew = within.add(material);
    Cost made = isNew && ingredient.isEmpty()
        ? Formulas.computed(material)
            .ask(snapshot)
            .flatMap(formula -> madePerGram(formula, within))
            .orElseGet(() -> Cost.unknown(material))
        : Cost.unknown(material);
    within.remove(material);
    return made;
  }

  /** What a formula leaves bears the cost of all that was weighed in. */
  private Optional<Cost> madePerGram(ComputedFormula formula, Set<String> within) {
    Outcome<Scaling> kilogram = Scaling.of(formula, new Target.Charge(KILOGRAM));
    return kilogram
        .toOptional()
        .filter(scaling -> scaling.cooked().mass().grams() > 0)
        .map(scaling ->
            ofBatch(scaling, within).times(1 / scaling.cooked().mass().grams()));
  }

  private Optional<Statement> housePrice(String material) {
    return house.flatMap(home -> home.facts()
        .all("price")
        .filter(
            line -> line.objectNames().stream().anyMatch(name -> name.value().equals(material)))
        .findFirst());
  }

  private Optional<Ingredient> ingredient(String material) {
    return snapshot
        .library()
        .find(Kind.MATERIAL, material)
        .flatMap(Entry::declaration)
        .flatMap(d -> d instanceof Ingredient one ? Optional.of(one) : Optional.empty());
  }

  private static boolean isWater(Ingredient ingredient) {
    return ingredient
        .composition()
        .map(c -> c.fraction(Component.WATER) >= WATER)
        .orElse(false);
  }

  /** {@code price 1.10 per kg}, {@code price 2.40-2.80 per L}; empty where it is by no weight. */
  private static Optional<Cost> price(Statement line, Optional<Ingredient> ingredient) {
    Optional<Quantity> figure = operands(line)
        .flatMap(o -> o instanceof Operand.Figure f ? Stream.of(f.quantity()) : Stream.empty())
        .findFirst();
    Optional<Double> grams = operands(line)
        .flatMap(o -> o instanceof Operand.Rate rate ? Stream.of(rate.unit()) : Stream.empty())
        .findFirst()
        .flatMap(unit -> grams(unit, ingredient));
    return figure.flatMap(f ->
        grams.map(g -> new Cost(f.low().doubleValue() / g, f.high().doubleValue() / g, Set.of())));
  }

  private static Optional<Double> grams(Unit unit, Optional<Ingredient> ingredient) {
    double amount = unit.factor().doubleValue();
    if (unit.measures(Unit.Dimension.MASS)) {
      return Optional.of(amount);
    }
    return unit.measures(Unit.Dimension.VOLUME)
        ? ingredient
            .flatMap(Ingredient::density)
            .map(density -> amount * density.gramsPerMillilitre())
        : Optional.empty();
  }

  private static Stream<Operand> operands(Statement line) {
    return line.objects().stream().map(Located::value);
  }
}
