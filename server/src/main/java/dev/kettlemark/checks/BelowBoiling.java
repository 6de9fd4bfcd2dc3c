package dev.kettlemark.checks;

import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.SaturationLine;
import java.util.List;
import java.util.Optional;

/**
 * Reports a cook temperature at which not even water boils.
 *
 * <p>Where the digits make sense in the other scale, the scale is wrong. Otherwise the step may only
 * mean to warm the mass, and that is a warning.
 */
public final class BelowBoiling implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("below-boiling", "nothing boils at this cook temperature");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Optional<Temperature> water = subject
        .formula()
        .flatMap(
            formula -> SaturationLine.boilingPoint(formula.kitchen().pressure()).toOptional());
    return water.stream()
        .flatMap(boils -> subject.formula().stream()
            .flatMap(CookStep::of)
            .filter(cook -> cook.band().isWhollyBelow(boils))
            .map(cook -> finding(subject, cook, boils)))
        .toList();
  }

  private static Finding finding(Subject subject, CookStep cook, Temperature boils) {
    Finding finding = INFO.at(
            cook.target().span(),
            "nothing boils at %s; water boils at %s here",
            Display.celsius(cook.band()),
            Display.celsius(boils))
        .because("to cook is to boil water off, and none would leave");
    OtherScale other = OtherScale.of(cook.target());
    boolean isOtherScale = subject.threshold(Threshold.USUAL_COOK).contains(other.temperature());
    boolean isHere = subject.isWrittenHere(cook.target().span());
    if (isOtherScale) {
      return isHere ? finding.withFixes(other.fixes(subject.text())) : finding;
    }
    Finding doubt = finding.as(Severity.WARNING);
    return isHere
        ? doubt.withFix(Fix.replace("Write `warm`", cook.step().word().span(), "warm"))
        : doubt;
  }
}
