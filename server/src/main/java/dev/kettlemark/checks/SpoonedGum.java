package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.text.Excerpt;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports a powder of small dose that is measured in spoons.
 *
 * <p>A spoon of powder varies by about a third with how it is filled; common practice, no source.
 */
public final class SpoonedGum implements Rule {

  private static final RuleInfo INFO = RuleInfo.error(
      "spooned-gum", "a powder of small dose is measured by volume, so its dose is a guess");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().map(computed -> check(subject, computed)).orElse(List.of());
  }

  private static List<Finding> check(Subject subject, ComputedFormula computed) {
    boolean byWeight = computed.formula().isByWeight();
    return computed.amounts().lines().stream()
        .filter(line -> !computed.formula().inherits(line.line().span()))
        .filter(line -> isSmallPowder(subject, computed, line))
        .map(line -> finding(subject, computed, line, byWeight))
        .toList();
  }

  private static boolean isSmallPowder(
      Subject subject, ComputedFormula computed, Amounts.LineAmount line) {
    return line.line().measure().value() instanceof Measure.Capacity
        && ingredient(computed, line.line())
            .filter(found -> found.form().filter("powder"::equals).isPresent())
            .filter(found -> isSmall(found, line, subject.threshold(Threshold.SMALL_POWDER_DOSE)))
            .isPresent();
  }

  private static boolean isSmall(Ingredient powder, Amounts.LineAmount line, Ratio small) {
    return line.share()
        .map(share -> Ratio.ofFraction(share.doubleValue()).compareTo(small) < 0)
        .orElse(powder.uses().stream().anyMatch(use -> use.high().compareTo(small) <= 0));
  }

  private static Finding finding(
      Subject subject, ComputedFormula computed, Amounts.LineAmount amount, boolean byWeight) {
    AmountLine line = amount.line();
    String written = Columns.shown(line.measure().span().of(subject.text()));
    Optional<Mass> mass = mass(computed, line);
    String about = mass.map(m -> ", about " + Display.mass(m)).orElse("");
    Finding finding = INFO.at(
        line.measure().span(),
        "%s of %s%s",
        written,
        Excerpt.of(line.ingredient().value()),
        about);
    if (mass.isEmpty()) {
      return finding.because("a spoon of powder varies by a third, and its density is not known;"
          + " weigh a spoon, or give the ingredient a `density`");
    }
    String weighed = byWeight
        ? Display.mass(mass.get())
        : amount.share().map(Display::percent).orElse(Display.mass(mass.get()));
    return finding
        .because("a spoon of powder varies by about a third, and the dose with it")
        .withFix(new Fix(
            "Weigh `" + weighed + "`",
            List.of(new Columns(subject.section()).replaceMeasure(line, weighed))));
  }

  private static Optional<Mass> mass(ComputedFormula computed, AmountLine line) {
    BigFraction millilitres = ((Measure.Capacity) line.measure().value()).millilitres();
    return ingredient(computed, line)
        .flatMap(Ingredient::density)
        .map(density -> Mass.ofGrams(density.gramsPerMillilitre() * millilitres.doubleValue()));
  }

  private static Optional<Ingredient> ingredient(ComputedFormula computed, AmountLine line) {
    return computed.material(line.ingredient().value()).flatMap(material -> material.ingredient());
  }
}
