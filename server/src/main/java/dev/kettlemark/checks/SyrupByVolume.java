package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.text.Excerpt;
import java.util.List;
import java.util.Optional;

/**
 * Reports a volume of something poured that weighs clearly more or less than as much water.
 *
 * <p>At the bench a millilitre is weighed as a gram; of honey that is a third short. Among percentages
 * a volume is out of place whatever it weighs, and {@link MixedUnits} says so.
 */
public final class SyrupByVolume implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "syrup-by-volume", "a heavy or light liquid is measured by volume, and weighed as water");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().filter(computed -> computed.formula().isByWeight()).stream()
        .flatMap(computed -> computed.amounts().lines().stream()
            .map(Amounts.LineAmount::line)
            .filter(line -> !computed.formula().inherits(line.span()))
            .flatMap(line -> finding(subject, computed, line).stream()))
        .toList();
  }

  private static Optional<Finding> finding(
      Subject subject, ComputedFormula computed, AmountLine line) {
    if (!(line.measure().value() instanceof Measure.Capacity capacity)) {
      return Optional.empty();
    }
    double millilitres = capacity.millilitres().doubleValue();
    double allowed = subject.threshold(Threshold.VOLUME_WEIGHT_GAP).fraction();
    return computed
        .material(line.ingredient().value())
        .flatMap(material -> material.ingredient())
        .filter(Ingredient::isLiquid)
        .flatMap(Ingredient::density)
        .map(density -> density.gramsPerMillilitre())
        .filter(density -> Math.abs(density - 1) > allowed)
        .map(density -> Mass.ofGrams(density * millilitres))
        .map(mass -> finding(subject, line, mass, millilitres));
  }

  private static Finding finding(Subject subject, AmountLine line, Mass mass, double millilitres) {
    String weight = Display.mass(mass);
    return INFO.at(
            line.measure().span(),
            "%s of %s weighs %s, not %s",
            Columns.shown(line.measure().span().of(subject.text())),
            Excerpt.of(line.ingredient().value()),
            weight,
            Display.mass(Mass.ofGrams(millilitres)))
        .because("whoever takes a millilitre for a gram is off by that much")
        .withFix(new Fix(
            "Weigh `" + weight + "`",
            List.of(new Columns(subject.section()).replaceMeasure(line, weight))));
  }
}
