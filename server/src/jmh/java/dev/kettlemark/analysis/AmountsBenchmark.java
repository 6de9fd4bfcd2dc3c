package dev.kettlemark.analysis;

import dev.kettlemark.bench.BenchTexts;
import dev.kettlemark.model.Formula;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import java.util.concurrent.TimeUnit;
import org.hipparchus.fraction.BigFraction;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The exact amounts of a formula of forty lines; in this package, since nobody else may ask for them alone. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class AmountsBenchmark {

  private Formula formula;

  @Setup
  public void read() {
    formula = (Formula) BenchTexts.formula().entries().get(0).declaration().orElseThrow();
  }

  @Benchmark
  public Amounts resolveAmounts() {
    return AmountSystem.solve(
        formula,
        line -> Outcome.unknown(Reason.MISSING_FIGURE, "nothing is poured by volume"),
        BigFraction.ONE);
  }
}
