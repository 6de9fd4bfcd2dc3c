package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Reports honey or another syrup rich in fructose that is cooked until it is dark and bitter.
 *
 * <p>A band that only reaches over the limit is worth knowing, no more.
 */
public final class BrownedFructose implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "browned-fructose", "a syrup rich in fructose turns dark and bitter at this temperature");

  /** Where honey is cooked for a nougat; common practice, no source. */
  private static final Temperature USUAL = Temperature.ofCelsius(122);

  /** From here on darkness is wanted, and the word for it is caramel; see {@code SugarStage}. */
  private static final Temperature CARAMEL = Temperature.ofCelsius(160);

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Temperature limit = subject.threshold(Threshold.FRUCTOSE_HEAT);
    Ratio rich = subject.threshold(Threshold.FRUCTOSE_SHARE);
    return subject.formula().stream()
        .flatMap(formula -> CookStep.of(formula)
            .filter(cook -> cook.band().high().compareTo(limit) > 0)
            .filter(cook -> cook.band().isWhollyBelow(CARAMEL))
            .flatMap(cook -> fructose(cook)
                .filter(share -> share.compareTo(rich) > 0)
                .map(share -> finding(subject, formula, cook, share, limit))
                .stream()))
        .toList();
  }

  /** Fructose as a share of all solids in the pan. */
  private static Optional<Ratio> fructose(CookStep cook) {
    return cook.charge()
        .flatMap(charge -> charge.composition().dry())
        .map(solids -> Ratio.ofFraction(solids.fraction(Component.FRUCTOSE)));
  }

  private static Finding finding(
      Subject subject, ComputedFormula formula, CookStep cook, Ratio share, Temperature limit) {
    String bringer = InThePan.of(formula, cook).lines().stream()
        .max(Comparator.comparing(
            line -> InThePan.share(formula, List.of(line), Component.FRUCTOSE)))
        .map(InThePan::name)
        .orElse("");
    Finding finding = INFO.at(
            cook.target().span(),
            "%s of the solids are fructose, most of it of `%s`, and %s browns it",
            Display.estimate(share),
            bringer,
            Display.celsius(cook.band()))
        .because("fructose caramelises from 110 °C on, and soon is dark and bitter")
        .withFixes(cook.cookToHere(subject, USUAL));
    return cook.band().isWhollyAbove(limit) ? finding : finding.as(Severity.INFORMATION);
  }
}
