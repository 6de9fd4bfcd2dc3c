package dev.kettlemark.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Chance;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import org.hipparchus.analysis.UnivariateFunction;
import org.junit.jupiter.api.Test;

/** How exactly and in how few steps a root is found; every keystroke solves dozens. */
class RootTest {

  /** Both bounds, and the ten steps or so of a method of higher order; bisection alone takes fifty. */
  private static final int MOST_EVALUATIONS = 20;

  @Test
  void findsNumbersThatAreInTables() {
    // OEIS A003957, A030178 and A002193, from memory.
    assertEquals(0.7390851332151607, root(0, 1, x -> Math.cos(x) - x), 1e-12);
    assertEquals(0.5671432904097838, root(0, 1, x -> x * Math.exp(x) - 1), 1e-12);
    assertEquals(1.4142135623730951, root(0, 2, x -> x * x - 2), 1e-12);
  }

  @Test
  void hasNoneWhereTheSignStays() {
    assertEquals(OptionalDouble.empty(), Root.between(-1, 1, x -> x * x + 1));
    assertEquals(OptionalDouble.empty(), Root.between(0, 1, x -> Double.NaN));
  }

  @Test
  void aBoundMayBeTheRoot() {
    assertEquals(2, root(2, 5, x -> x - 2));
    assertEquals(5, root(2, 5, x -> x - 5));
  }

  @Test
  void needsFewSteps() {
    Chance.rounds(2000, random -> {
      // As vapour pressures go: a power and an exponential, bent either way, with one root.
      double steep = 0.5 + 8 * random.nextDouble();
      double power = 0.4 + 3 * random.nextDouble();
      double at = 0.02 + 0.96 * random.nextDouble();
      UnivariateFunction curve = x -> Math.expm1(steep * x) + Math.pow(x, power);
      double level = curve.value(at);
      var steps = new AtomicInteger();
      double found = root(0, 1, x -> {
        steps.incrementAndGet();
        return curve.value(x) - level;
      });
      assertEquals(at, found, 1e-9);
      assertTrue(steps.get() <= MOST_EVALUATIONS, () -> steps + " steps");
    });
  }

  private static double root(double low, double high, UnivariateFunction function) {
    return Root.between(low, high, function).orElseThrow();
  }
}
