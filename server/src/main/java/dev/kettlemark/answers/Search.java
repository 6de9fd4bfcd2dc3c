package dev.kettlemark.answers;

import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import java.util.function.DoubleFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathRuntimeException;

/** Finds what to set for a wanted figure, over a stated range in which the figure only rises or falls. */
final class Search {

  private static final double RELATIVE_ACCURACY = 1e-12;
  private static final double ABSOLUTE_ACCURACY = 1e-7;
  private static final double FIGURE_ACCURACY = 1e-11;
  private static final int ORDER = 5;
  private static final int MOST_TRIALS = 120;

  private final double low;
  private final double high;
  private final DoubleFunction<Outcome<Double>> figure;

  /**
   * Sets up a search.
   *
   * @param low the least that can be set
   * @param high the most that can be set, above the least
   * @param figure what comes of a setting
   */
  Search(double low, double high, DoubleFunction<Outcome<Double>> figure) {
    this.low = low;
    this.high = high;
    this.figure = figure;
  }

  /** What the ends of the range give. */
  record Reach(double atLow, double atHigh) {

    double least() {
      return Math.min(atLow, atHigh);
    }

    double most() {
      return Math.max(atLow, atHigh);
    }

    boolean holds(double wanted) {
      return least() <= wanted && wanted <= most();
    }
  }

  Outcome<Reach> reach() {
    return Outcome.both(figure.apply(low), figure.apply(high), Reach::new);
  }

  /** What to set for a figure that {@link #reach} holds. */
  Outcome<Double> settingFor(double wanted) {
    return reach().flatMap(reach -> {
      if (!reach.holds(wanted)) {
        return Outcome.unknown(Reason.NO_SOLUTION, "it lies beyond what can be reached");
      }
      if (reach.atLow() == wanted) {
        return Outcome.known(low);
      }
      if (reach.atHigh() == wanted) {
        return Outcome.known(high);
      }
      return between(wanted);
    });
  }

  private Outcome<Double> between(double wanted) {
    try {
      return Outcome.known(new BracketingNthOrderBrentSolver(
              RELATIVE_ACCURACY, ABSOLUTE_ACCURACY, FIGURE_ACCURACY, ORDER)
          .solve(MOST_TRIALS, setting -> known(setting) - wanted, low, high));
    } catch (GapInModel gap) {
      return gap.unknown.retyped();
    } catch (MathRuntimeException notFound) {
      return Outcome.unknown(Reason.NO_SOLUTION, "the search found no setting that gives it");
    }
  }

  private double known(double setting) {
    return figure.apply(setting).fold(value -> value, unknown -> {
      throw new GapInModel(unknown);
    });
  }

  /** Carries an unknown out of the solver, which knows numbers only. */
  private static final class GapInModel extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Outcome.Unknown<Double> unknown;

    private GapInModel(Outcome.Unknown<Double> unknown) {
      super(unknown.because());
      this.unknown = unknown;
    }
  }
}
