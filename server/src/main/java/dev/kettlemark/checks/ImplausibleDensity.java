package dev.kettlemark.checks;

import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import java.util.List;
import java.util.Optional;

/**
 * Reports a density that no kitchen material has.
 *
 * <p>Every volume that is turned into a weight, and every spoon on a sheet, is off by the same factor.
 */
public final class ImplausibleDensity implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("implausible-density", "a density that no kitchen material has");

  /** From flakes to a saturated syrup, in g/mL; common practice, no source. */
  private static final double LIGHTEST_USUAL = 0.1;

  private static final double HEAVIEST_USUAL = 1.6;

  /** Puffed grain is lighter than any powder, in g/mL; common practice, no source. */
  private static final double LIGHTEST = 0.02;

  /** Sodium bicarbonate and table salt, the heaviest crystals of a kitchen, lie at 2.2 g/mL; from memory. */
  private static final double HEAVIEST = 3;

  private static final double PER_LITRE = 1000;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return OwnIngredient.of(subject)
        .flatMap(own -> own.facts().first("density"))
        .flatMap(fact -> fact.objectFigure(Unit.Dimension.DENSITY))
        .flatMap(figure -> finding(subject, figure))
        .stream()
        .toList();
  }

  private static Optional<Finding> finding(Subject subject, Located<Quantity> figure) {
    double value = figure.value().middleInBase().doubleValue();
    if (isUsual(value)) {
      return Optional.empty();
    }
    String written = figure.span().of(subject.text());
    boolean isPossible = LIGHTEST <= value && value <= HEAVIEST;
    Finding finding = INFO.at(
            figure.span(),
            isPossible
                ? "%s is rare; kitchen materials lie from %s to %s g/mL"
                : "nothing in a kitchen has %s; materials lie from %s to %s g/mL",
            written,
            Display.trimmed(LIGHTEST_USUAL, 1),
            Display.trimmed(HEAVIEST_USUAL, 1))
        .because("every volume turned into a weight is off by the same factor");
    Finding judged = isPossible ? finding.as(Severity.WARNING) : finding;
    return Optional.of(
        isUsual(value / PER_LITRE) ? judged.withFix(perMillilitre(figure, value)) : judged);
  }

  /** Data sheets give grams in a litre, or kilograms in a cubic metre. */
  private static Fix perMillilitre(Located<Quantity> figure, double value) {
    String text = Display.trimmed(value / PER_LITRE, 3) + " g/mL";
    return Fix.replace("Write `" + text + "`, if it was grams per litre", figure.span(), text);
  }

  private static boolean isUsual(double value) {
    return LIGHTEST_USUAL <= value && value <= HEAVIEST_USUAL;
  }
}
