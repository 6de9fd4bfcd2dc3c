package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.BasisWeights;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Measure;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.text.Excerpt;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports amounts that hang on themselves: a share of a basis that holds the line itself.
 *
 * <p>Below the whole such a circle has one exact answer, which is worth knowing; from the whole on it
 * has none that anybody can weigh.
 */
public final class CircularBasis implements Rule {

  private static final RuleInfo INFO = RuleInfo.error(
      "circular-basis", "an amount is a share of a basis that holds the line itself");

  /** For more bases than these no formula is solved, so nothing is to be told of its circles. */
  private static final int MOST_BASES = 40;

  /** A longer way is told by its first lines. */
  private static final int MOST_SHOWN = 4;

  /** Before the first line of a way. */
  private static final int START = -1;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().map(computed -> check(subject, computed)).orElse(List.of());
  }

  private static List<Finding> check(Subject subject, ComputedFormula computed) {
    if (lacksFigures(computed)) {
      return List.of();
    }
    Shares shares = Shares.of(computed);
    boolean tangled = !computed.amounts().solved() && hasSeveralRests(computed);
    Map<String, Map<Integer, Integer>> reached = new HashMap<>();
    Set<Integer> told = new HashSet<>();
    List<Finding> findings = new ArrayList<>();
    for (int line = 0; line < shares.bases().size(); line++) {
      Optional<String> basis = shares.bases().get(line).filter(shares.held()::containsKey);
      if (basis.isPresent() && !told.contains(line)) {
        Map<Integer, Integer> steps = reached.computeIfAbsent(basis.get(), shares::reachedFrom);
        List<Integer> circle = circle(steps, line);
        told.addAll(circle);
        if (!circle.isEmpty()) {
          finding(subject, computed, circle, tangled).ifPresent(findings::add);
        }
      }
    }
    return findings;
  }

  /** A basis with an unknown member has no answer yet, which is told by rules of their own. */
  private static boolean lacksFigures(ComputedFormula computed) {
    return computed.amounts().lines().stream()
        .anyMatch(line ->
            line.share().fold(value -> false, unknown -> unknown.reason() != Reason.CONTRADICTION));
  }

  private static Optional<String> basis(Formula formula, Amounts.LineAmount line) {
    return line.line().measure().value() instanceof Measure.Share share
            && share.fraction().signum() != 0
            && formula.basisOf(share) instanceof Basis.Named named
        ? Optional.of(named.name().value())
        : Optional.empty();
  }

  /** The way from a line back to itself, the line first; empty where there is none. */
  private static List<Integer> circle(Map<Integer, Integer> steps, int line) {
    List<Integer> back = new ArrayList<>();
    int at = line;
    while (steps.containsKey(at)) {
      back.add(0, at);
      at = steps.getOrDefault(at, START);
    }
    Collections.rotate(back, 1);
    return back;
  }

  private static Optional<Finding> finding(
      Subject subject, ComputedFormula computed, List<Integer> circle, boolean tangled) {
    Amounts.LineAmount first = computed.amounts().lines().get(circle.get(0));
    boolean solvable = circle.stream()
        .map(line -> computed.amounts().lines().get(line).share())
        .allMatch(share -> share.map(value -> value.signum() > 0).orElse(false));
    if (!solvable && tangled) {
      return Optional.empty();
    }
    Finding finding = INFO.at(
        first.line().measure().span(), "%s", path(computed, circle) + solution(first, solvable));
    Finding placed = circle.size() == 1
        ? finding
        : finding.withRelated(
            subject
                .entry()
                .origin(computed
                    .amounts()
                    .lines()
                    .get(circle.get(circle.size() - 1))
                    .line()
                    .measure()
                    .span()),
            "it comes back here");
    return Optional.of(
        solvable
            ? solved(subject, computed, placed, first)
            : placed.because(
                "a share of itself of 100 % and more leaves no amount that anybody can weigh"));
  }

  /** Then the system has no single solution anyway, which is told by a rule of its own. */
  private static boolean hasSeveralRests(ComputedFormula computed) {
    return computed.formula().amounts().stream()
            .filter(line -> line.measure().value() instanceof Measure.Sufficient)
            .count()
        > 1;
  }

  private static String path(ComputedFormula computed, List<Integer> circle) {
    List<Amounts.LineAmount> lines = computed.amounts().lines();
    List<Integer> shown = new ArrayList<>(circle.subList(0, Math.min(MOST_SHOWN, circle.size())));
    shown.add(circle.get(0));
    String way = shown.stream()
        .map(line -> Excerpt.of(lines.get(line).line().ingredient().value()))
        .collect(Collectors.joining(circle.size() > MOST_SHOWN ? " … " : " is a share of "));
    return way + " through "
        + circle.stream()
            .flatMap(line -> basis(computed.formula(), lines.get(line)).stream())
            .distinct()
            .limit(MOST_SHOWN)
            .map(Excerpt::of)
            .collect(Collectors.joining(" and "));
  }

  private static String solution(Amounts.LineAmount first, boolean solvable) {
    return solvable
        ? ", which makes " + first.share().map(Display::percent).orElse("") + " of charge"
        : ", and no amounts fit";
  }

  private static Finding solved(
      Subject subject, ComputedFormula computed, Finding finding, Amounts.LineAmount first) {
    Finding told = finding
        .as(Severity.INFORMATION)
        .because("the circle has one answer, and it moves with every line of the basis");
    if (computed.formula().inherits(first.line().span())) {
      return told;
    }
    String written = first.share().map(Display::percent).orElse("") + " of charge";
    return told.withFix(new Fix(
        "Write `" + written + "`",
        List.of(new Columns(subject.section()).replaceMeasure(first.line(), written))));
  }

  /**
   * Which lines hang on which.
   *
   * @param bases for each line the basis it is a share of; empty for shares of the charge and weights
   * @param held for each basis the lines of it that are shares of a basis themselves
   */
  private record Shares(List<Optional<String>> bases, Map<String, List<Integer>> held) {

    static Shares of(ComputedFormula computed) {
      Formula formula = computed.formula();
      List<Optional<String>> bases =
          computed.amounts().lines().stream().map(line -> basis(formula, line)).toList();
      List<String> names = bases.stream().flatMap(Optional::stream).distinct().toList();
      Map<String, List<Integer>> held = new HashMap<>();
      for (String name : names.subList(0, Math.min(MOST_BASES, names.size()))) {
        List<BigFraction> weights = BasisWeights.of(formula, name).orElse(List.of());
        List<Integer> lines = IntStream.range(0, weights.size())
            .filter(line -> weights.get(line).signum() != 0 && bases.get(line).isPresent())
            .boxed()
            .toList();
        held.put(name, isWhole(formula, name, weights, lines) ? List.of() : lines);
      }
      return new Shares(bases, held);
    }

    /** What all lines are percentages of, 100 % of itself, is where a formula starts and no circle. */
    private static boolean isWhole(
        Formula formula, String name, List<BigFraction> weights, List<Integer> lines) {
      if (formula.percent().filter(p -> p.value().words().equals(name)).isEmpty()) {
        return false;
      }
      List<AmountLine> amounts = formula.amounts();
      BigFraction sum = BigFraction.ZERO;
      for (int line : lines) {
        Measure measure = amounts.get(line).measure().value();
        if (measure instanceof Measure.Share share && share.basis().isEmpty()) {
          sum = sum.add(share.fraction().multiply(weights.get(line)));
        }
      }
      boolean ofAll =
          formula.percent().filter(p -> p.value().words().equals(name)).isPresent();
      return ofAll && sum.equals(BigFraction.ONE);
    }

    /** Every line that a basis comes to, each with the line before it; shortest ways first. */
    Map<Integer, Integer> reachedFrom(String start) {
      Map<Integer, Integer> steps = new LinkedHashMap<>();
      List<Integer> open = new ArrayList<>();
      held.getOrDefault(start, List.of()).forEach(line -> step(steps, open, line, START));
      Set<String> seen = new HashSet<>(Set.of(start));
      for (int i = 0; i < open.size(); i++) {
        int line = open.get(i);
        String basis = bases.get(line).orElseThrow();
        if (seen.add(basis)) {
          held.getOrDefault(basis, List.of()).forEach(next -> step(steps, open, next, line));
        }
      }
      return steps;
    }

    private static void step(
        Map<Integer, Integer> steps, List<Integer> open, int line, int before) {
      if (steps.putIfAbsent(line, before) == null) {
        open.add(line);
      }
    }
  }
}
