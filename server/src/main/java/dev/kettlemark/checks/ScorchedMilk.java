package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.quantity.TemperatureDifference;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/** Reports milk, cream or another protein in a syrup that is cooked until they scorch. */
public final class ScorchedMilk implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("scorched-milk", "milk or other protein scorches at this temperature");

  /** Below this share of protein in the pan little browns, as with butter; common practice, no source. */
  private static final double LITTLE_PROTEIN = 0.005;

  /** Below this share of reducing sugars likewise. */
  private static final double LITTLE_REDUCING = 0.005;

  private static final TemperatureDifference SAFELY = TemperatureDifference.ofCelsius(3);

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Temperature limit = subject.threshold(Threshold.MILK_HEAT);
    return subject.formula().stream()
        .flatMap(formula -> CookStep.of(formula)
            .filter(cook -> cook.band().isWhollyAbove(limit))
            .flatMap(cook -> check(subject, formula, cook, limit).stream()))
        .toList();
  }

  private static Optional<Finding> check(
      Subject subject, ComputedFormula formula, CookStep cook, Temperature limit) {
    InThePan pan = InThePan.of(formula, cook);
    List<Amounts.LineAmount> proteins = pan.of(formula, ScorchedMilk::scorches);
    double all = pan.lines().stream()
        .mapToDouble(line -> line.share().map(BigFraction::doubleValue).orElse(0.0))
        .sum();
    double protein = InThePan.share(formula, proteins, Component.PROTEIN);
    boolean isReducing = cook.charge()
        .filter(charge -> charge.composition().sugars().fraction()
                - charge.composition().fraction(Component.SUCROSE)
            > LITTLE_REDUCING)
        .isPresent();
    if (all <= 0 || protein / all < LITTLE_PROTEIN || !isReducing) {
      return Optional.empty();
    }
    Amounts.LineAmount most = proteins.stream()
        .max(
            Comparator.comparing(line -> InThePan.share(formula, List.of(line), Component.PROTEIN)))
        .orElseThrow();
    return Optional.of(INFO.at(
            cook.target().span(),
            "`%s` scorches at %s",
            InThePan.name(most),
            Display.celsius(cook.band()))
        .because("protein and reducing sugars brown fast above " + Display.celsius(limit)
            + " and burn on to the pan; stir all the time")
        .withRelated(subject.entry().origin(most.line().ingredient().span()), "brings the protein")
        .withFixes(cook.cookToHere(subject, limit.minus(SAFELY))));
  }

  /** Nuts and seeds roast in a brittle, and are meant to. */
  private static boolean scorches(Ingredient ingredient) {
    return ingredient.hasRole("dairy")
        || ingredient.hasRole("protein")
        || ingredient.hasRole("whipping");
  }
}
