package dev.kettlemark.bench;

import dev.kettlemark.checks.Rules;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One key in a figure, and all findings of the document anew, as an editor asks for them. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class KeystrokeBenchmark {

  @Param({"40", "1200"})
  public int lines;

  private Snapshot snapshot;
  private Document document;
  private int cursor;
  private int keys;

  @Setup
  public void open() {
    document = BenchTexts.formulas(lines / 40);
    snapshot = Snapshot.of(BenchTexts.library(document));
    cursor = BenchTexts.cursor(document);
    findings();
  }

  @Benchmark
  public int key() {
    keys++;
    String digit = Integer.toString(keys % 10);
    document = document.with(new TextEdit(new Span(cursor, cursor + 1), digit));
    snapshot = snapshot.with(snapshot.library().with(document));
    return findings();
  }

  private int findings() {
    return document.entries().stream()
        .mapToInt(entry -> Rules.of(snapshot, entry).size())
        .sum();
  }
}
