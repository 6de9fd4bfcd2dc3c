package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.text.Excerpt;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports ounces of something that is poured.
 *
 * <p>The language reads them as ounces of weight, but whoever wrote them may have meant a measuring
 * jug: for water the two differ by 4 %, for a syrup by almost half.
 */
public final class AmbiguousOunce implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("ambiguous-ounce", "ounces of a liquid may be of weight or of volume");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(computed -> computed.amounts().lines().stream()
            .map(Amounts.LineAmount::line)
            .filter(line -> !computed.formula().inherits(line.span()))
            .flatMap(line -> ounces(line)
                .flatMap(figure -> liquid(computed, line)
                    .map(liquid -> finding(subject, computed, line, figure, liquid)))
                .stream()))
        .toList();
  }

  private static Optional<Quantity> ounces(AmountLine line) {
    return line.written()
        .filter(figure -> figure.unit().filter(Unit.OUNCE::equals).isPresent());
  }

  private static Optional<Ingredient> liquid(ComputedFormula computed, AmountLine line) {
    return computed
        .material(line.ingredient().value())
        .flatMap(material -> material.ingredient())
        .filter(Ingredient::isLiquid);
  }

  private static Finding finding(
      Subject subject,
      ComputedFormula computed,
      AmountLine line,
      Quantity figure,
      Ingredient liquid) {
    Mass weight = Mass.ofGrams(figure.middleInBase().doubleValue());
    Optional<Mass> poured = liquid.density().map(density -> poured(figure, density));
    Finding finding = INFO.at(
            line.measure().span(),
            "%s of %s: of weight it is %s%s",
            Columns.shown(line.measure().span().of(subject.text())),
            Excerpt.of(line.ingredient().value()),
            Display.mass(weight),
            poured.map(mass -> ", of volume " + Display.mass(mass)).orElse(""))
        .because("an ounce of weight is counted, but a liquid is often measured in fluid ounces")
        .withFix(weighed(subject, computed, line, weight, "ounces of weight"));
    return poured
        .map(mass -> finding.withFix(weighed(subject, computed, line, mass, "fluid ounces")))
        .orElse(finding);
  }

  private static Mass poured(Quantity figure, Density density) {
    double millilitres = figure.middle().multiply(Unit.FLUID_OUNCE.factor()).doubleValue();
    return Mass.ofGrams(millilitres * density.gramsPerMillilitre());
  }

  /** In grams, or among percentages in percent, where the batch says how much that is. */
  private static Fix weighed(
      Subject subject, ComputedFormula computed, AmountLine line, Mass mass, String meant) {
    Optional<BigFraction> charge = computed
        .amounts()
        .charge()
        .filter(grams -> !computed.formula().isByWeight() && !computed.isNominal());
    String written = charge
        .map(grams -> Display.percent(Ratio.ofFraction(mass.grams() / grams.doubleValue())))
        .orElseGet(() -> Display.mass(mass));
    return new Fix(
        "Write `" + written + "`, if it was " + meant,
        List.of(new Columns(subject.section()).replaceMeasure(line, written)));
  }
}
