package dev.kettlemark.protocol;

import dev.kettlemark.bench.BenchTexts;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
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

/**
 * One request of an editor, by the method that the wire calls, in the middle of a text whose findings are told.
 *
 * <p>{@code BenchmarkRun} gives the names of all requests.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 2, time = 150, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 3, time = 100, timeUnit = TimeUnit.MILLISECONDS)
@Fork(1)
public class RequestBenchmark {

  /** Opening a text takes longer than asking, and one process asks everything. */
  private static final Map<Integer, EveryRequest> OPENED = new ConcurrentHashMap<>();

  /** A request by its method. */
  @Param("hover")
  public String request;

  @Param({"100", "10000"})
  public int lines;

  private EveryRequest.Ask ask;

  @Setup
  public void open() {
    ask = OPENED
        .computeIfAbsent(lines, length -> EveryRequest.on(BenchTexts.forFeatures(length)))
        .named(request);
  }

  @Benchmark
  public Object answer() {
    return ask.now();
  }
}
