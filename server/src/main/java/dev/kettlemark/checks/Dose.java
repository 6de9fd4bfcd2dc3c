package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Derived;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.UseRange;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How much of an agent a formula weighs in, on the basis of which its usual dose is told.
 *
 * @param amount the line
 * @param ingredient its pantry entry
 * @param usual the usual dose
 * @param dose what the formula has, on the same basis
 */
record Dose(LineAmount amount, Ingredient ingredient, UseRange usual, Ratio dose) {

  private static final List<String> AGENTS = List.of("gelling", "thickening", "whipping");

  private static final Derived<List<Dose>> ALL = Derived.by(Dose::each);

  /**
   * The doses of all agents of a formula.
   *
   * <p>A dose of the charge or of the finished mass says something of a finished mass only: a part of
   * something else has more.
   */
  static Stream<Dose> of(ComputedFormula formula) {
    return ALL.of(formula).stream();
  }

  private static List<Dose> each(ComputedFormula formula) {
    return formula.amounts().lines().stream()
        .flatMap(line -> of(formula, line).stream())
        .toList();
  }

  private static Optional<Dose> of(ComputedFormula formula, LineAmount amount) {
    Optional<Ingredient> agent = formula
        .material(amount.line().ingredient().value())
        .flatMap(material -> material.ingredient())
        // A spoon of powder is no dose, and is told of by itself.
        .filter(ingredient -> !(amount.line().measure().value() instanceof Measure.Capacity))
        .filter(ingredient -> AGENTS.stream().anyMatch(ingredient::hasRole));
    return agent.flatMap(ingredient -> usual(ingredient, amount.line())
        .flatMap(usual ->
            dose(formula, amount, usual).map(dose -> new Dose(amount, ingredient, usual, dose))));
  }

  /** The usual dose on the line's own basis, or else the first one. */
  private static Optional<UseRange> usual(Ingredient ingredient, AmountLine line) {
    Optional<String> written = basis(line).map(Basis::words);
    return ingredient.uses().stream()
        .filter(use -> written.filter(use.basis().words()::equals).isPresent())
        .findFirst()
        .or(() -> ingredient.uses().stream().findFirst());
  }

  private static Optional<Ratio> dose(ComputedFormula formula, LineAmount amount, UseRange usual) {
    Optional<Double> share = amount.share().toOptional().map(s -> s.doubleValue());
    if (usual.basis() instanceof Basis.Named named) {
      return ofLiquid(formula, amount, named.name().value(), share);
    }
    if (!Finish.isReached(formula)) {
      return Optional.empty();
    }
    return usual.basis() instanceof Basis.Charge
        ? share.map(Ratio::ofFraction)
        : share.flatMap(s -> formula
            .process()
            .yieldShare()
            .toOptional()
            .filter(yield -> yield.fraction() > 0)
            .map(yield -> Ratio.ofFraction(s / yield.fraction())));
  }

  /** Without a declared liquid nothing is told of a dose of the charge: the liquid may be any water. */
  private static Optional<Ratio> ofLiquid(
      ComputedFormula formula, LineAmount amount, String liquid, Optional<Double> share) {
    Optional<String> written = basis(amount.line()).map(Basis::words);
    if (written.filter(liquid::equals).isPresent()
        && amount.line().measure().value() instanceof Measure.Share own) {
      return Optional.of(Ratio.ofFraction(own.fraction().doubleValue()));
    }
    boolean isGuess =
        ChargeLines.isOfCharge(formula, amount.line()) && !Liquid.isDeclared(formula, liquid);
    double in = isGuess ? 0 : Liquid.of(formula, liquid);
    return in > 0 ? share.map(s -> Ratio.ofFraction(s / in)) : Optional.empty();
  }

  private static Optional<Basis> basis(AmountLine line) {
    return line.measure().value() instanceof Measure.Share share ? share.basis() : Optional.empty();
  }

  /** Whether the line is written on the basis of the usual dose. */
  boolean isOwnBasis() {
    return !(usual.basis() instanceof Basis.Named)
        || basis(amount.line())
            .map(Basis::words)
            .filter(usual.basis().words()::equals)
            .isPresent();
  }

  /** How many times the given dose it is. */
  double against(Ratio other) {
    return dose.fraction() / other.fraction();
  }

  /** The middle of the usual doses. */
  Ratio middle() {
    return usual.low().plus(usual.high()).times(0.5);
  }

  /** The usual dose with its basis and, where it is named, its source. */
  String usualWords() {
    return Display.range(usual.low(), usual.high()) + " of " + usual.basis().words()
        + usual.source().map(source -> " (" + source + ")").orElse("");
  }

  /** Writes the same line with its figure multiplied; nothing where the figure is not a plain share or weight. */
  Optional<Fix> times(Subject subject, double factor, String title) {
    AmountLine line = amount.line();
    Measure measure = line.measure().value();
    if (!subject.isWrittenHere(line.span()) || line.written().isEmpty()) {
      return Optional.empty();
    }
    if (measure instanceof Measure.Share || measure instanceof Measure.Weight) {
      double figure = line.written().get().middle().doubleValue() * factor;
      String shown = Figures.roundedDown(figure);
      return Optional.of(new Fix(
          title, List.of(Figures.rewritten(subject.text(), line.measure().span(), shown))));
    }
    return Optional.empty();
  }
}
