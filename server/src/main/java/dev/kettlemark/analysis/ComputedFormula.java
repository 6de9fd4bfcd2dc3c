package dev.kettlemark.analysis;

import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Formula;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.hipparchus.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * A formula with all that follows from it.
 *
 * <p>Two computed formulas are the same only if they are one object.
 */
public final class ComputedFormula {

  /** The charge that a formula without any weight is followed through with. */
  public static final Mass NOMINAL_CHARGE = Mass.ofGrams(1000);

  private final ResolvedFormula resolved;
  private final Amounts amounts;
  private final ProcessResult process;
  private final Map<String, Material> materials;
  private final Kitchen kitchen;

  /** With which charge the formula was followed last; several readers ask for the same. */
  private volatile @Nullable Run last;

  private final Map<Derived<?>, Object> derived = new ConcurrentHashMap<>();

  private record Run(double grams, ProcessResult process) {}

  ComputedFormula(
      ResolvedFormula resolved,
      Amounts amounts,
      ProcessResult process,
      Map<String, Material> materials,
      Kitchen kitchen) {
    this.resolved = resolved;
    this.amounts = amounts;
    this.process = process;
    this.materials = Map.copyOf(materials);
    this.kitchen = kitchen;
  }

  /** The formula, for a variant with its parent's lines. */
  public Formula formula() {
    return resolved.formula();
  }

  public ResolvedFormula resolved() {
    return resolved;
  }

  public Amounts amounts() {
    return amounts;
  }

  /** The formula followed through its stages, with its batch or a nominal charge. */
  public ProcessResult process() {
    return process;
  }

  /** Worked out twice, if two threads ask at once, with the same outcome. */
  @SuppressWarnings("unchecked") // What is derived has the type of what derives it.
  <T> T derived(Derived<T> what) {
    Object known = derived.get(what);
    if (known == null) {
      known = what.workOut(this);
      derived.put(what, known);
    }
    return (T) known;
  }

  /** The formula followed through its stages with another charge; percents stay as they are. */
  public ProcessResult processWith(Mass charge) {
    double grams = charge.grams();
    if (grams == ownCharge()) {
      return process;
    }
    Run known = last;
    if (known == null || known.grams() != grams) {
      known = new Run(grams, KitchenRun.of(formula(), amounts, materials, kitchen, charge));
      last = known;
    }
    return known.process();
  }

  private double ownCharge() {
    return amounts.charge().map(BigFraction::doubleValue).orElse(NOMINAL_CHARGE.grams());
  }

  /** The same formula with another charge, in grams; percents stay as they are. */
  public ComputedFormula charged(BigFraction grams) {
    if (amounts.charge().filter(grams::equals).isPresent()) {
      return this;
    }
    return new ComputedFormula(
        resolved,
        new Amounts(amounts.lines(), Optional.of(grams), amounts.solved()),
        processWith(Mass.ofGrams(grams.doubleValue())),
        materials,
        kitchen);
  }

  /** The formula with something changed, to see what would become of it. */
  public Experiment experiment() {
    return new Experiment(resolved, materials, kitchen);
  }

  /** Whether the masses are those of a nominal charge, since the formula gives no weight. */
  public boolean isNominal() {
    return amounts.charge().isEmpty();
  }

  /** What each name of an amount line means. */
  public Optional<Material> material(String name) {
    return Optional.ofNullable(materials.get(name));
  }

  public Kitchen kitchen() {
    return kitchen;
  }

  /** What the finished mass is made of. */
  public Outcome<Composition> composition() {
    return process.last().map(stage -> stage.left().composition()).orElseGet(Meeting::nothing);
  }
}
