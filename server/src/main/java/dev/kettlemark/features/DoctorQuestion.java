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

/** What the sugar of a syrup may be asked: does it have the doctor sugars that keep its kind from graining? */
final class DoctorQuestion {

  /** What is nearly all sucrose counts as sugar. */
  private static final double SUGAR = 0.95;

  private DoctorQuestion() {}

  /** The exchange that gives a cooked stage enough; empty where it or what is made of it has enough. */
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
    int last = formula.process().stages().size() - 1;
    return Optional.of(formula)
        .flatMap(DoctorQuestion::least)
        .filter(least -> isBelow(formula, line.stage(), least) && isBelow(formula, last, least))
        .map(least -> DoctorExchange.of(formula, shelf, line.stage(), least, Optional.empty()));
  }

  private static boolean isBelow(ComputedFormula formula, int stage, Ratio least) {
    return DoctorExchange.shareNow(formula, stage)
        .toOptional()
        .filter(now -> now.compareTo(least) < 0)
        .isPresent();
  }

  /**
   * The least doctor share that is usual for the texture; a quarter where none is said.
   *
   * <p>Foams, gels and dry mixes do not stand by it.
   */
  private static Optional<Ratio> least(ComputedFormula formula) {
    String texture =
        formula.formula().facts().wordOf("texture").map(Located::value).orElse("");
    return switch (texture) {
      case "brittle", "hard" -> Optional.of(leastOf(DoctorSugars.Usual.HARD_CANDY));
      case "chewy" -> Optional.of(leastOf(DoctorSugars.Usual.CHEWY));
      case "short" -> Optional.of(leastOf(DoctorSugars.Usual.FONDANT));
      case "" -> Optional.of(DoctorSugars.LEAST_DOCTOR_IN_HARD_CANDY);
      default -> Optional.empty();
    };
  }

  private static Ratio leastOf(DoctorSugars.Usual usual) {
    return usual.sucroseShare().high().complement();
  }
}
