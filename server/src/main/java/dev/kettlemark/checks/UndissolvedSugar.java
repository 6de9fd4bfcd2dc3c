package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Portion;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.SucroseSolubility;
import dev.kettlemark.science.SyrupBoiling;
import java.util.List;
import java.util.Optional;

/** Reports a charge with so little water that its sugar does not dissolve even when it boils. */
public final class UndissolvedSugar implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "undissolved-sugar", "the sugar does not dissolve in its water even at the boil");

  /** Expected error of the solubility beside other sugars, see {@link SucroseSolubility}. */
  private static final double MODEL_ERROR = 0.1;

  /** Solids that surely dissolve; common practice, no source. */
  private static final double ENOUGH_WATER = 0.22;

  /** Cooked higher, sugar melts, whatever its water did; see {@code SugarStage.CLEAR_LIQUID}. */
  private static final Temperature MELTS = Temperature.ofCelsius(160);

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(formula -> CookStep.of(formula)
            .filter(cook -> cook.band().isWhollyBelow(MELTS))
            .flatMap(cook -> check(subject, formula, cook).stream()))
        .toList();
  }

  private static Optional<Finding> check(Subject subject, ComputedFormula formula, CookStep cook) {
    InThePan pan = InThePan.of(formula, cook);
    boolean isDry = pan.of(formula, ingredient -> ingredient.hasTrait("crystalline")).stream()
        .anyMatch(line -> line.stage() == formula.formula().stages().indexOf(cook.stage()));
    return cook.charge()
        .map(Portion::composition)
        .filter(composition -> isDry)
        .flatMap(composition -> SyrupBoiling.boilingPoint(
                composition, formula.kitchen().pressure())
            .toOptional()
            // What boils above its target only is told by another rule.
            .filter(boils -> boils.compareTo(cook.band().high()) < 0)
            .flatMap(boils -> SucroseSolubility.supersaturation(composition, boils)
                .toOptional()
                .filter(beyond -> beyond.fraction() > 1 + MODEL_ERROR)
                .map(beyond -> finding(subject, formula, cook, pan, composition, boils, beyond))));
  }

  private static Finding finding(
      Subject subject,
      ComputedFormula formula,
      CookStep cook,
      InThePan pan,
      Composition composition,
      Temperature boils,
      Ratio beyond) {
    Finding finding = INFO.at(
            cook.step().word().span(),
            "%s water dissolves only %s of the sugar at its boiling point of %s",
            Display.estimate(composition.water()),
            Display.estimate(Ratio.ofFraction(1 / beyond.fraction())),
            Display.celsius(boils))
        .because("crystals that are left grain the whole mass; 22 % water or more is usual");
    return PanWater.of(formula, pan)
        .map(water -> finding
            .withRelated(subject.entry().origin(water.line().line().measure().span()), "its water")
            .withFixes(
                water.fix(subject, formula, "Raise the water to 22 % of the pan", ENOUGH_WATER)))
        .orElse(finding);
  }
}
