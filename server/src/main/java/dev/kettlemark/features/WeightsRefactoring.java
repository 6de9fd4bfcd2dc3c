package dev.kettlemark.features;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Measure;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/** A whole formula in weights instead of percent, or in percent instead of weights. */
final class WeightsRefactoring {

  /** All lines together may change no more than one line alone. */
  private static final BigFraction SLACK = new BigFraction(1, 1_000_000_000_000L);

  private static final String FACT = "  %-10s%s";

  private final RefactoringSite site;
  private final ComputedFormula computed;
  private final Formula formula;

  private WeightsRefactoring(RefactoringSite site, Formula formula) {
    this.site = site;
    this.computed = site.computed();
    this.formula = formula;
  }

  static List<Refactoring> at(RefactoringSite site) {
    return site
        .formula()
        .map(formula -> new WeightsRefactoring(site, formula))
        .filter(WeightsRefactoring::isPossible)
        .flatMap(found -> found.formula.isByWeight() ? found.toPercent() : found.toWeights())
        .stream()
        .toList();
  }

  private boolean isPossible() {
    return !formula.amounts().isEmpty()
        && site.isPlainThroughout()
        && computed.amounts().complete()
        && computed.amounts().charge().isPresent();
  }

  private Optional<Refactoring> toWeights() {
    BigFraction charge = computed.amounts().charge().orElseThrow();
    List<TextEdit> edits = new ArrayList<>();
    List<LineAmount> lines = computed.amounts().lines();
    for (int i = 0; i < lines.size(); i++) {
      Measure measure = lines.get(i).line().measure().value();
      if (measure instanceof Measure.Share || measure instanceof Measure.Sufficient) {
        BigFraction grams = lines.get(i).share().orElse(BigFraction.ZERO).multiply(charge);
        edits.add(
            site.measured(i, WrittenFigure.of(grams, 0, SLACK.multiply(charge)).text() + " g"));
      }
    }
    return site.sameGrams(
        ActionTitle.of("Write all in weights", ": " + grams(charge) + " in all", ", no percent"),
        Refactoring.Kind.REWRITE,
        edits);
  }

  private Optional<Refactoring> toPercent() {
    BigFraction charge = computed.amounts().charge().orElseThrow();
    List<TextEdit> edits = new ArrayList<>();
    boolean isOfCharge = formula
        .percent()
        .map(Located::value)
        .filter(basis -> basis.words().equals("charge"))
        .isPresent();
    String of = isOfCharge || formula.percent().isEmpty() ? " %" : " % of charge";
    List<LineAmount> lines = computed.amounts().lines();
    for (int i = 0; i < lines.size(); i++) {
      BigFraction share = lines.get(i).share().orElse(BigFraction.ZERO);
      String figure = WrittenFigure.of(
              share.multiply(100), BasisRefactoring.PERCENT_DECIMALS, SLACK.multiply(100))
          .text();
      edits.add(site.measured(i, figure + of));
    }
    facts(charge).ifPresent(edits::add);
    return site.sameGrams(
        ActionTitle.of("Write all in percent", " of " + grams(charge), " charged"),
        Refactoring.Kind.REWRITE,
        edits);
  }

  /** The lines that percentages need and weights do not. */
  private Optional<TextEdit> facts(BigFraction charge) {
    List<String> missing = Stream.concat(
            formula.percent().isEmpty()
                ? Stream.of(FACT.formatted("percent", "of charge"))
                : Stream.<String>empty(),
            formula.batch().isEmpty()
                ? Stream.of(FACT.formatted(
                    "batch", WrittenFigure.of(charge, 0, SLACK.multiply(charge)).text() + " g"))
                : Stream.<String>empty())
        .toList();
    return missing.isEmpty()
        ? Optional.empty()
        : Optional.of(
            site.below(new Span(0, heading().end()), String.join(site.lineBreak(), missing)));
  }

  /** The last line that stands above the first stage and may stand above the percent line. */
  private Span heading() {
    return Stream.of("code", "version", "status", "percent")
        .flatMap(word -> formula.facts().all(word))
        .map(fact -> fact.span())
        .reduce((one, other) -> other.end() > one.end() ? other : one)
        .orElseGet(() -> site.entry().section().lines().get(0).span());
  }

  private static String grams(BigFraction charge) {
    return Display.trimmed(charge.doubleValue(), 2) + " g";
  }
}
