package dev.kettlemark.checks;

import dev.kettlemark.bench.BenchTexts;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Question;
import dev.kettlemark.library.Scope;
import dev.kettlemark.library.Snapshot;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One rule on a formula of forty lines that is computed and labelled already.
 *
 * <p>Each time it asks its questions anew, as the first rule would that asks them; what several rules ask is
 * counted for each of them. {@code BenchmarkRun} gives all ids of the catalogue.
 */
@State(org.openjdk.jmh.annotations.Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 2, time = 50, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 3, time = 50, timeUnit = TimeUnit.MILLISECONDS)
@Fork(1)
public class RuleBenchmark {

  /** A rule by its id. */
  @Param("total-off")
  public String rule;

  private Snapshot snapshot;
  private Entry entry;
  private Rule measured;
  private Subject subject;

  /** Remembers answers as a computation does. */
  private static final class Asking implements Scope {

    private final Snapshot snapshot;
    private final Map<Question<?>, Object> answers = new HashMap<>();

    Asking(Snapshot snapshot) {
      this.snapshot = snapshot;
    }

    @Override
    @SuppressWarnings("unchecked") // A question's answer has its type.
    public <T> T ask(Question<T> question) {
      Object known = answers.get(question);
      if (known == null) {
        known = question.ask(snapshot);
        answers.put(question, known);
      }
      return (T) known;
    }
  }

  @Setup
  public void compute() {
    Document document = BenchTexts.formula();
    snapshot = Snapshot.of(BenchTexts.library(document));
    entry = document.entries().get(0);
    measured = Rules.named(rule).orElseThrow(() -> new IllegalArgumentException(rule));
    Rules.of(snapshot, entry);
  }

  @Setup(Level.Invocation)
  public void ask() {
    subject = new Subject(entry, new Asking(snapshot));
  }

  @Benchmark
  public List<Finding> check() {
    return new HouseLimits(subject).check(measured);
  }
}
