package dev.kettlemark.science;

import java.util.OptionalDouble;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Finds where a function crosses zero between two bounds. */
final class Root {

  private static final double RELATIVE_ACCURACY = 1e-13;
  private static final double ABSOLUTE_ACCURACY = 1e-11;
  private static final double FUNCTION_ACCURACY = 1e-15;
  private static final int ORDER = 5;

  /** A bracketed root needs about ten steps; bisection alone would need fifty. */
  private static final int MOST_STEPS = 200;

  private Root() {}

  /**
   * Returns the zero of a continuous function, or nothing if it has the same sign at both bounds or
   * is not a number at one.
   *
   * @param low the lower bound
   * @param high the upper bound, above the lower
   */
  static OptionalDouble between(double low, double high, UnivariateFunction function) {
    double atLow = function.value(low);
    double atHigh = function.value(high);
    if (atLow == 0) {
      return OptionalDouble.of(low);
    }
    if (atHigh == 0) {
      return OptionalDouble.of(high);
    }
    if (!(Math.signum(atLow) * Math.signum(atHigh) < 0)) {
      return OptionalDouble.empty();
    }
    // The solver keeps counters, so each search has its own and the callers stay free of shared
    // state.
    var solver = new BracketingNthOrderBrentSolver(
        RELATIVE_ACCURACY, ABSOLUTE_ACCURACY, FUNCTION_ACCURACY, ORDER);
    return OptionalDouble.of(
        solver.solve(MOST_STEPS, function, low, high, AllowedSolution.ANY_SIDE));
  }
}
