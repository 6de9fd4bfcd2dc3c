package dev.kettlemark.scaling;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Derived;
import dev.kettlemark.analysis.Kitchen;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hipparchus.fraction.BigFraction;

/**
 * What to weigh on which scale for one batch.
 *
 * <p>Each amount goes on the finest scale that can hold it. Readings are rounded so that on each scale
 * their sum is the rounded sum of the exact amounts (largest remainder).
 *
 * @param lines one for each amount line, in order
 */
public record WeighingList(List<WeighingLine> lines) {

  private static final Set<String> CRITICAL_ROLES = Set.of(
      "whipping",
      "gelling",
      "thickening",
      "acidulant",
      "mineral",
      "salt",
      "colour",
      "leavening",
      "emulsifier");

  /** Premixes that a kitchen can make without a calculator. */
  private static final List<Integer> PARTS = List.of(4, 9, 19, 24, 49, 99);

  /** Without a scale amounts are shown to a hundredth of a gram. */
  private static final BigFraction USUAL_STEP = new BigFraction(1, 100);

  private static final Derived<Optional<WeighingList>> OWN = Derived.by(WeighingList::own);

  public WeighingList {
    lines = List.copyOf(lines);
  }

  /** The list for a formula's own charge on the scales of its kitchen; empty where either is not said. */
  public static Optional<WeighingList> of(ComputedFormula formula) {
    return OWN.of(formula);
  }

  private static Optional<WeighingList> own(ComputedFormula formula) {
    List<House.Scale> scales = formula.kitchen().house().map(House::scales).orElse(List.of());
    return formula
        .amounts()
        .charge()
        .filter(charge -> !scales.isEmpty())
        .map(charge -> of(formula, charge, scales));
  }

  /** The list for a formula and a batch in grams. */
  public static WeighingList of(ComputedFormula formula, BigFraction batch) {
    return of(formula, batch, formula.kitchen().house().map(House::scales).orElse(List.of()));
  }

  /** The list for a formula and a batch in grams, weighed on scales of another kitchen. */
  public static WeighingList of(
      ComputedFormula formula, BigFraction batch, List<House.Scale> scales) {
    List<Amounts.LineAmount> amounts = formula.amounts().lines();
    List<BigFraction> exact = amounts.stream()
        .map(line -> line.share().orElse(BigFraction.ZERO).multiply(batch))
        .toList();
    List<Optional<House.Scale>> chosen =
        exact.stream().map(grams -> scaleFor(scales, grams)).toList();
    List<BigFraction> readings = readings(exact, chosen);
    List<WeighingLine> lines = new ArrayList<>();
    for (int i = 0; i < amounts.size(); i++) {
      Amounts.LineAmount amount = amounts.get(i);
      lines.add(new WeighingLine(
          formula.formula().stages().get(amount.stage()).name().value(),
          amount.line().ingredient().value(),
          exact.get(i),
          chosen.get(i),
          readings.get(i),
          weighings(exact.get(i), chosen.get(i)),
          premix(formula, amount, exact.get(i), chosen.get(i), exact)));
    }
    return new WeighingList(lines);
  }

  /** The finest scale that can hold an amount; where none can, the one that holds most. */
  public static Optional<House.Scale> scaleFor(List<House.Scale> scales, BigFraction grams) {
    Comparator<House.Scale> finest = Comparator.comparing(House.Scale::step);
    return scales.stream()
        .filter(scale -> scale.capacity().compareTo(grams) >= 0)
        .min(finest)
        .or(() -> scales.stream().max(Comparator.comparing(House.Scale::capacity)));
  }

  /** Whether an ingredient decides texture or taste by its dose. */
  public static boolean isCritical(Ingredient ingredient) {
    return ingredient.roles().stream().anyMatch(CRITICAL_ROLES::contains);
  }

  /** What share of an amount its dose may be off by weighing. */
  public static double allowedError(Kitchen kitchen, Ingredient ingredient) {
    Threshold<Ratio> threshold =
        isCritical(ingredient) ? Threshold.CRITICAL_WEIGHING_ERROR : Threshold.USUAL_WEIGHING_ERROR;
    return kitchen.threshold(threshold).fraction();
  }

  /** Splits and premixes, in plain words. */
  public List<String> notes() {
    List<String> notes = new ArrayList<>();
    for (WeighingLine line : lines) {
      if (line.weighings() > 1) {
        notes.add("%s: weigh in %d goes, since scale %s holds %s g"
            .formatted(
                line.ingredient(),
                line.weighings(),
                line.scale().map(s -> s.name().value()).orElse(""),
                figure(line.scale().map(House.Scale::capacity).orElse(BigFraction.ZERO))));
      }
      line.premix()
          .ifPresent(premix -> notes.add(
              "%s: no scale weighs %s g well; mix 1 part with %d parts %s, weigh %s g of the mix, and weigh %s g less %s"
                  .formatted(
                      line.ingredient(),
                      figure(line.grams()),
                      premix.parts(),
                      premix.carrier(),
                      figure(premix.grams()),
                      figure(premix.carrierGrams()),
                      premix.carrier())));
    }
    return notes;
  }

  /** The sum of all readings. */
  public BigFraction total() {
    return lines.stream().map(WeighingLine::reading).reduce(BigFraction.ZERO, BigFraction::add);
  }

  private static String figure(BigFraction grams) {
    return Display.trimmed(grams.doubleValue(), 3);
  }

  private static int weighings(BigFraction grams, Optional<House.Scale> scale) {
    return scale
        .map(s -> Math.max(1, (int) Math.ceil(grams.divide(s.capacity()).doubleValue() - 1e-12)))
        .orElse(1);
  }

  /** Rounds on each scale by the largest remainder. */
  private static List<BigFraction> readings(
      List<BigFraction> exact, List<Optional<House.Scale>> chosen) {
    Map<BigFraction, List<Integer>> byStep = new HashMap<>();
    for (int i = 0; i < exact.size(); i++) {
      byStep.computeIfAbsent(step(chosen.get(i)), step -> new ArrayList<>()).add(i);
    }
    BigFraction[] readings = new BigFraction[exact.size()];
    byStep.forEach((step, lines) -> round(step, lines, exact, readings));
    return List.of(readings);
  }

  private static void round(
      BigFraction step, List<Integer> lines, List<BigFraction> exact, BigFraction[] readings) {
    BigFraction sum = BigFraction.ZERO;
    long floors = 0;
    Map<Integer, BigFraction> remainders = new HashMap<>();
    for (int line : lines) {
      BigFraction steps = exact.get(line).divide(step);
      long whole = floor(steps);
      readings[line] = step.multiply(whole);
      remainders.put(line, steps.subtract(whole));
      sum = sum.add(steps);
      floors += whole;
    }
    long missing = floor(sum.add(new BigFraction(1, 2))) - floors;
    List<Integer> order = lines.stream()
        .sorted(Comparator.<Integer, BigFraction>comparing(
                line -> remainders.getOrDefault(line, BigFraction.ZERO))
            .reversed()
            .thenComparing(Comparator.naturalOrder()))
        .toList();
    for (int i = 0; i < missing && i < order.size(); i++) {
      readings[order.get(i)] = readings[order.get(i)].add(step);
    }
  }

  private static long floor(BigFraction value) {
    BigInteger[] parts = value.getNumerator().divideAndRemainder(value.getDenominator());
    BigInteger whole = parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    return whole.longValue();
  }

  private static BigFraction step(Optional<House.Scale> scale) {
    return scale.map(House.Scale::step).orElse(USUAL_STEP);
  }

  private static Optional<WeighingLine.Premix> premix(
      ComputedFormula formula,
      Amounts.LineAmount amount,
      BigFraction grams,
      Optional<House.Scale> scale,
      List<BigFraction> exact) {
    Optional<Ingredient> ingredient =
        formula.material(amount.line().ingredient().value()).flatMap(Material::ingredient);
    if (scale.isEmpty() || ingredient.isEmpty() || grams.signum() <= 0) {
      return Optional.empty();
    }
    double allowed = allowedError(formula.kitchen(), ingredient.get());
    if (ingredient.get().isLiquid() || stepShare(scale.get(), grams) <= allowed) {
      return Optional.empty();
    }
    for (int parts : PARTS) {
      BigFraction mix = grams.multiply(parts + 1);
      if (stepShare(scale.get(), mix) <= allowed) {
        return carrier(formula, amount, grams.multiply(parts), exact)
            .map(name -> new WeighingLine.Premix(name, parts, mix));
      }
    }
    return Optional.empty();
  }

  /** What one step of the scale is of an amount: an amount of few steps cannot be weighed well. */
  public static double stepShare(House.Scale scale, BigFraction grams) {
    return scale.step().doubleValue() / grams.doubleValue();
  }

  /** A dry sugar of the same stage of which there is enough. */
  private static Optional<String> carrier(
      ComputedFormula formula,
      Amounts.LineAmount amount,
      BigFraction needed,
      List<BigFraction> exact) {
    List<Amounts.LineAmount> lines = formula.amounts().lines();
    for (int i = 0; i < lines.size(); i++) {
      String name = lines.get(i).line().ingredient().value();
      boolean isDrySugar = formula
          .material(name)
          .flatMap(Material::ingredient)
          .filter(other -> other.hasRole("sweetening"))
          .flatMap(Ingredient::form)
          .filter(form -> form.equals("crystals") || form.equals("powder"))
          .isPresent();
      if (lines.get(i).stage() == amount.stage()
          && isDrySugar
          && exact.get(i).compareTo(needed) >= 0) {
        return Optional.of(name);
      }
    }
    return Optional.empty();
  }
}
