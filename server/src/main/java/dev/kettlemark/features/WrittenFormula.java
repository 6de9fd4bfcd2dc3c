package dev.kettlemark.features;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Variant;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.text.Span;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/**
 * A computed formula beside the section that writes it.
 *
 * <p>What a variant inherits has its place at the parent's name in the heading; only what the section
 * writes itself counts as its own here.
 */
record WrittenFormula(Entry entry, ComputedFormula computed) {

  static Optional<WrittenFormula> of(Snapshot snapshot, Entry entry) {
    return Formulas.computed(snapshot, entry).map(computed -> new WrittenFormula(entry, computed));
  }

  Declaration declaration() {
    return computed.formula();
  }

  /** The amount lines that stand in this section, in order. */
  Stream<LineAmount> ownLines() {
    return computed.amounts().lines().stream().filter(line -> isOwn(line.line().span()));
  }

  /** The stages whose heading stands in this section, in order. */
  Stream<StageResult> ownStages() {
    return computed.process().stages().stream()
        .filter(result -> isOwn(result.stage().span()));
  }

  /** What the step on a line of this section did. */
  Optional<StepResult> stepAt(Span line) {
    return isOwn(line)
        ? computed.process().stages().stream()
            .flatMap(stage -> stage.steps().stream())
            .filter(result -> result.step().span().equals(line))
            .findFirst()
        : Optional.empty();
  }

  /** Whether the figures in grams are the user's own, not those of a nominal charge. */
  boolean hasWeights() {
    return !computed.isNominal();
  }

  /** A line's share and weight, such as {@code 5.07 % · 60.9 g}; only the share without a batch. */
  Optional<String> shareAndWeight(LineAmount line) {
    return line.share().toOptional().map(share -> {
      String percent = Display.percent(ratio(share));
      return weight(line).map(weight -> percent + " · " + weight).orElse(percent);
    });
  }

  Optional<String> weight(LineAmount line) {
    return computed.amounts().grams(line).map(grams -> Display.mass(mass(grams)));
  }

  static Ratio ratio(BigFraction share) {
    return Ratio.ofFraction(share.doubleValue());
  }

  static Mass mass(BigFraction grams) {
    return Mass.ofGrams(grams.doubleValue());
  }

  private boolean isOwn(Span span) {
    return entry
        .declaration()
        .flatMap(d ->
            d instanceof Variant variant ? variant.parent().map(Located::span) : Optional.empty())
        .filter(span::equals)
        .isEmpty();
  }
}
