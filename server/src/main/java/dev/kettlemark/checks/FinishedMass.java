package dev.kettlemark.checks;

import dev.kettlemark.analysis.Boiling;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Derived;
import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.SyrupBoiling;
import dev.kettlemark.text.Span;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a formula makes, with the texture it is meant to have.
 *
 * @param formula the formula
 * @param figures of what its last stage leaves
 * @param composition of the same
 * @param texture the word, and where it stands; empty where the formula does not say
 */
record FinishedMass(
    ComputedFormula formula,
    MassFigures figures,
    Composition composition,
    Optional<Located<String>> texture) {

  /** From here on a cook makes a boiled sugar of a charge; pearl and thread end there. */
  private static final Temperature BOILED_SUGAR = Temperature.ofCelsius(110);

  private static final Derived<Optional<FinishedMass>> MADE = Derived.by(FinishedMass::made);

  static Optional<FinishedMass> of(Subject subject) {
    return subject.formula().flatMap(FinishedMass::of);
  }

  static Optional<FinishedMass> of(ComputedFormula formula) {
    return MADE.of(formula);
  }

  private static Optional<FinishedMass> made(ComputedFormula formula) {
    return Outcome.both(
            MassFigures.of(formula),
            formula.composition(),
            (figures, composition) -> new FinishedMass(
                formula, figures, composition, formula.formula().facts().wordOf("texture")))
        .toOptional();
  }

  boolean isMeantToBe(String... words) {
    return texture.filter(word -> List.of(words).contains(word.value())).isPresent();
  }

  /** Whether sugar was boiled for it. */
  boolean isBoiled() {
    return CookStep.of(formula).anyMatch(cook -> cook.band().high().compareTo(BOILED_SUGAR) >= 0);
  }

  /** Whether water was boiled off at all. */
  boolean isCooked() {
    return CookStep.of(formula).findAny().isPresent();
  }

  /** Whether some pan was cooked beyond a temperature. */
  boolean isCookedAbove(Temperature limit) {
    return CookStep.of(formula).anyMatch(cook -> cook.band().high().compareTo(limit) > 0);
  }

  /** Where the texture is said, or else the formula's name. */
  Span place() {
    return texture.map(Located::span).orElseGet(() -> formula.formula().name().span());
  }

  /** Water activity in storage: of a grained mass that of what lies between its crystals. */
  Outcome<Band<Ratio>> waterActivity() {
    return isMeantToBe("short") ? figures.grainedWaterActivity() : figures.waterActivity();
  }

  /** Another word for the texture. */
  List<Fix> textureFix(Subject subject, String word) {
    return texture
        .filter(written -> subject.isWrittenHere(written.span()))
        .map(written -> List.of(Fix.replace("Write `texture " + word + "`", written.span(), word)))
        .orElse(List.of());
  }

  /**
   * Cooks the wettest pan so that the whole holds another share of water.
   *
   * <p>Empty where no boil of a usual syrup gets there.
   */
  List<Fix> cookTo(Subject subject, Ratio water) {
    double mass = figures.parcel().mass().map(Mass::grams).orElse(0.0);
    double surplus = mass
        * (composition.water().fraction() - water.fraction())
        / water.complement().fraction();
    Band<Temperature> usual = subject.threshold(Threshold.USUAL_COOK);
    return CookStep.of(formula)
        .max(Comparator.comparing(cook -> waterLeft(cook)))
        .flatMap(cook -> target(cook, surplus)
            .filter(usual::contains)
            .map(target -> cook.cookToHere(subject, target)))
        .orElse(List.of());
  }

  private Optional<Temperature> target(CookStep cook, double surplus) {
    return cook.result().after().stream()
        .flatMap(parcel -> parcel.portion().toOptional().stream())
        .findFirst()
        .filter(portion -> portion.massOf(Component.WATER).grams() > surplus)
        .flatMap(portion -> SyrupBoiling.boilingPoint(
                portion
                    .composition()
                    .withWaterFraction(
                        Ratio.ofFraction((portion.massOf(Component.WATER).grams() - surplus)
                            / (portion.mass().grams() - surplus))),
                Boiling.meant(cook.step(), formula.kitchen()).pressure())
            .toOptional());
  }

  private static double waterLeft(CookStep cook) {
    return cook.result().after().stream()
        .flatMap(parcel -> parcel.portion().toOptional().stream())
        .mapToDouble(portion -> portion.massOf(Component.WATER).grams())
        .sum();
  }
}
