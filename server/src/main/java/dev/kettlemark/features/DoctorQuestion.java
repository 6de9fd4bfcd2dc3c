package dev.kettlemark.features;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Experiment.StepPlace;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.answers.Answer;
import dev.kettlemark.answers.CookPlaces;
import dev.kettlemark.answers.DoctorExchange;
import dev.kettlemark.answers.Shelf;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Located;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.science.DoctorSugars;
import java.util.Optional;

/** What the sugar of a syrup may be asked: does it have the doctor sugars that are usual for its kind? */
final class DoctorQuestion {

  /** What is nearly all sucrose counts as sugar. */
  private static final double SUGAR = 0.95;

  private DoctorQuestion() {}

  /** The exchange that takes a cooked stage to the near end of what is usual; empty where it is usual. */
  static Optional<Outcome<Answer>> of(ComputedFormula formula, Shelf shelf, int index) {
    LineAmount line = formula.amounts().lines().get(index);
    boolean isSugar = formula
        .material(line.line().ingredient().value())
        .map(Material::composition)
        .flatMap(Outcome::toOptional)
        .filter(composition -> composition.fraction(Component.SUCROSE) >= SUGAR)
        .isPresent();
    boolean isCooked =
        CookPlaces.of(formula).stream().map(StepPlace::stage).anyMatch(s -> s == line.stage());
    if (!isSugar || !isCooked) {
      return Optional.empty();
    }
    return DoctorExchange.shareNow(formula, line.stage())
        .toOptional()
        .flatMap(now -> wanted(formula, now))
        .map(wanted ->
            DoctorExchange.of(formula, shelf, line.stage(), wanted, Optional.empty()));
  }

  /** The near end of the usual doctor share for the texture; a quarter where none is said. */
  private static Optional<Ratio> wanted(ComputedFormula formula, Ratio now) {
    String texture =
        formula.formula().facts().wordOf("texture").map(Located::value).orElse("");
    Optional<DoctorSugars.Usual> usual = switch (texture) {
      case "brittle", "hard" -> Optional.of(DoctorSugars.Usual.HARD_CANDY);
      case "chewy" -> Optional.of(DoctorSugars.Usual.CHEWY);
      case "short" -> Optional.of(DoctorSugars.Usual.FONDANT);
      default -> Optional.empty();
    };
    Ratio least = usual
        .map(kind -> kind.sucroseShare().high().complement())
        .orElse(DoctorSugars.LEAST_DOCTOR_IN_HARD_CANDY);
    Ratio most = usual.map(kind -> kind.sucroseShare().low().complement()).orElse(Ratio.ONE);
    if (now.compareTo(least) < 0) {
      return Optional.of(least);
    }
    return now.compareTo(most) > 0 ? Optional.of(most) : Optional.empty();
  }
}
