package dev.kettlemark.bench;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.checks.Finding;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.reading.Reading;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
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

/** A formula of forty lines, from its text to its findings, nothing kept from before. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FormulaBenchmark {

  private String text;
  private Library library;
  private Entry entry;

  @Setup
  public void read() {
    Document document = BenchTexts.formula();
    text = document.text().source().text();
    library = BenchTexts.library(document);
    entry = document.entries().get(0);
    long lines = text.lines().count();
    if (lines != 40 || !findings().isEmpty()) {
      throw new IllegalStateException(lines + " lines, " + findings());
    }
  }

  /** A section is read when somebody asks for what it says. */
  @Benchmark
  public Reading parse() {
    return Document.of("bench.kettle", text).entries().get(0).reading();
  }

  @Benchmark
  public Optional<ComputedFormula> compute() {
    return Formulas.computed(Snapshot.of(library), entry);
  }

  /** Computing included, since rules ask for what is computed. */
  @Benchmark
  public List<Finding> computeAndAllRules() {
    return findings();
  }

  private List<Finding> findings() {
    return Rules.of(Snapshot.of(library), entry);
  }
}
