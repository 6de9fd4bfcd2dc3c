package dev.kettlemark.analysis;

import java.util.function.Function;

/**
 * Something that several readers work out of a computed formula: it is worked out once for each formula.
 *
 * <p>A constant of the class that says how. What it yields is shared by threads, so nobody changes it.
 *
 * @param <T> what it yields
 */
public final class Derived<T> {

  private final Function<ComputedFormula, T> working;

  private Derived(Function<ComputedFormula, T> working) {
    this.working = working;
  }

  public static <T> Derived<T> by(Function<ComputedFormula, T> working) {
    return new Derived<>(working);
  }

  public T of(ComputedFormula formula) {
    return formula.derived(this);
  }

  T workOut(ComputedFormula formula) {
    return working.apply(formula);
  }
}
