package dev.kettlemark.bench;

import dev.kettlemark.checks.RuleBenchmark;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.protocol.EveryRequest;
import dev.kettlemark.protocol.RequestBenchmark;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.NoBenchmarksException;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;
import org.openjdk.jmh.runner.options.WarmupMode;

/**
 * Runs the benchmarks that a pattern picks.
 *
 * <p>Rules and requests come from the program itself, so that none is forgotten. They are many and short, so
 * they share this process, all are warmed before the first is measured, and each kind is told in one table.
 */
public final class BenchmarkRun {

  private static final String RULES = RuleBenchmark.class.getName();
  private static final String REQUESTS = RequestBenchmark.class.getName();

  private BenchmarkRun() {}

  /** The only argument is the pattern. */
  public static void main(String[] arguments) throws RunnerException {
    Pattern wanted = Pattern.compile(arguments.length == 0 ? ".*" : arguments[0]);
    if (wanted.matcher(RULES + ".check").find()) {
      tellRules(results(
          RULES, "rule", Rules.all().stream().map(rule -> rule.info().id()).toList()));
    }
    if (wanted.matcher(REQUESTS + ".answer").find()) {
      tellRequests(results(REQUESTS, "request", EveryRequest.names()));
    }
    try {
      new Runner(new OptionsBuilder()
              .include(wanted.pattern())
              .exclude(Pattern.quote(RULES))
              .exclude(Pattern.quote(REQUESTS))
              .build())
          .run();
    } catch (NoBenchmarksException none) {
      // The pattern picks rules or requests alone.
    }
  }

  private static Collection<RunResult> results(String benchmark, String param, List<String> values)
      throws RunnerException {
    ChainedOptionsBuilder options = new OptionsBuilder()
        .include(Pattern.quote(benchmark))
        .param(param, values.toArray(String[]::new))
        .forks(0)
        .warmupMode(WarmupMode.BULK)
        .verbosity(VerboseMode.SILENT)
        .shouldFailOnError(true);
    return new Runner(options.build()).run();
  }

  private static double median(RunResult result) {
    return result.getPrimaryResult().getStatistics().getPercentile(50);
  }

  private static void tellRules(Collection<RunResult> results) {
    List<RunResult> slowestFirst = new ArrayList<>(results);
    slowestFirst.sort(Comparator.comparingDouble(BenchmarkRun::median).reversed());
    System.out.printf("%n| Rule, formula of forty lines | Median, µs |%n|---|--:|%n");
    for (RunResult result : slowestFirst) {
      System.out.printf("| `%s` | %.1f |%n", result.getParams().getParam("rule"), median(result));
    }
    System.out.printf(
        "| all %d | %.0f |%n",
        slowestFirst.size(),
        slowestFirst.stream().mapToDouble(BenchmarkRun::median).sum());
  }

  private static void tellRequests(Collection<RunResult> results) {
    Map<String, Map<Integer, Double>> rows = new TreeMap<>();
    results.forEach(result -> rows.computeIfAbsent(
            result.getParams().getParam("request"), name -> new TreeMap<>())
        .put(Integer.parseInt(result.getParams().getParam("lines")), median(result)));
    System.out.printf("%n| Request, median in µs | 100 lines | 10,000 lines |%n|---|--:|--:|%n");
    rows.forEach((name, row) ->
        System.out.printf("| `%s` | %.1f | %.1f |%n", name, row.get(100), row.get(10_000)));
  }
}
