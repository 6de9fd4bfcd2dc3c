package dev.kettlemark.scaling;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a millilitre of a formula's finished mass weighs.
 *
 * <p>A density that the formula expects or checks counts first. A mass without air has the density of
 * what it is made of; for a whipped mass the usual density of its kind is too wide a band to fill moulds by.
 */
final class MassDensity {

  private MassDensity() {}

  static Outcome<Density> of(ComputedFormula formula) {
    Optional<Density> written = written(formula);
    if (written.isPresent()) {
      return Outcome.known(written.get());
    }
    return MassFigures.of(formula)
        .flatMap(figures ->
            figures.parcel().isAerated() ? unmeasured(figures) : figures.densityWithoutAir());
  }

  private static Outcome<Density> unmeasured(MassFigures figures) {
    return figures
        .density()
        .flatMap(band -> Outcome.<Density>unknown(
            Reason.MISSING_FIGURE,
            "the mass is whipped, usually to %s; add `expect density 0.80 g/mL` with your own figure",
            Display.density(band)))
        .fold(
            known -> Outcome.known(known),
            unknown -> unknown.reason() == Reason.MISSING_FIGURE
                ? Outcome.unknown(unknown.reason(), unknown.why())
                : Outcome.unknown(
                    Reason.MISSING_FIGURE,
                    "how much air the mass holds is not known; add `expect density 0.80 g/mL` with your own figure"));
  }

  private static Optional<Density> written(ComputedFormula formula) {
    Stream<Statement> expected =
        formula.formula().facts().all("expect").filter(MassDensity::speaksOfDensity);
    Stream<Statement> checked =
        formula.formula().steps().filter(step -> step.is("check") && speaksOfDensity(step));
    return Stream.concat(expected, checked)
        .flatMap(statement -> statement.figure(Unit.Dimension.DENSITY).stream())
        .map(Located::value)
        .map(quantity -> quantity.middleInBase().doubleValue())
        .filter(value -> value > 0)
        .map(Density::ofGramsPerMillilitre)
        .findFirst();
  }

  private static boolean speaksOfDensity(Statement statement) {
    return statement.objectNames().stream().anyMatch(name -> name.value().equals("density"));
  }
}
