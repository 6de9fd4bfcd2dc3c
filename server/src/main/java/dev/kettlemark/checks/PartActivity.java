package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.science.WaterActivity;
import java.util.Optional;

/** The water activity of a part of a piece. */
final class PartActivity {

  /** What is mostly fat holds no water that could move, and keeps other water from moving. */
  private static final double MOSTLY_FAT = 0.3;

  private PartActivity() {}

  /** In storage, with the band of the model; empty for fat, for paper, and where nobody knows. */
  static Optional<Band<Ratio>> of(Subject subject, String name) {
    Optional<ComputedFormula> formula = subject.ask(Formulas.computed(name));
    if (formula.isPresent()) {
      return formula
          .flatMap(FinishedMass::of)
          .filter(mass -> mass.composition().fraction(Component.FAT) < MOSTLY_FAT)
          .flatMap(mass -> mass.waterActivity().toOptional());
    }
    return subject
        .ingredient(name)
        .filter(ingredient -> !isPaper(ingredient))
        .flatMap(ingredient -> ingredient.composition().toOptional())
        .filter(composition -> composition.fraction(Component.FAT) < MOSTLY_FAT)
        .flatMap(composition -> Outcome.both(
                WaterActivity.of(composition, MassFigures.STORED_AT.low()),
                WaterActivity.of(composition, MassFigures.STORED_AT.high()),
                Band::spanning)
            .map(band -> band.spanning(WaterActivity.withError(band.low())))
            .toOptional());
  }

  /** Wafer paper is there to take up some water. */
  private static boolean isPaper(Ingredient ingredient) {
    return ingredient.hasRole("wafer") && !ingredient.hasTrait("heat-treated");
  }
}
