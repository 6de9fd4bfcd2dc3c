package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Density;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/**
 * How heavy a millilitre of a formula's finished mass is, air included.
 *
 * @param band within which it lies
 * @param written whether the formula itself says it, or else the model
 */
record BulkDensity(Band<Density> band, boolean written) {

  /** A density that the formula expects or checks, or else the one of the model. */
  static Optional<BulkDensity> of(ComputedFormula formula) {
    return written(formula)
        .map(band -> new BulkDensity(band, true))
        .or(() -> MassFigures.of(formula)
            .flatMap(MassFigures::density)
            .map(band -> new BulkDensity(band, false))
            .toOptional());
  }

  private static Optional<Band<Density>> written(ComputedFormula formula) {
    return Stream.concat(
            formula.formula().facts().all("expect"),
            formula.formula().steps().filter(step -> step.is("check")))
        .flatMap(statement -> figure(statement).stream())
        .flatMap(figure -> band(figure.value()).stream())
        .findFirst();
  }

  /** The mass that a check of density speaks of: the whipped one, or else the only one. */
  static Optional<StageParcel> measured(List<StageParcel> masses) {
    return masses.size() == 1
        ? Optional.of(masses.get(0))
        : masses.stream().filter(StageParcel::isAerated).findFirst();
  }

  /** The density that a fact or a step speaks of. */
  static Optional<Located<Quantity>> figure(Statement statement) {
    return statement.figure(Unit.Dimension.DENSITY);
  }

  /** A written density with its range or tolerance; empty where it makes no sense. */
  static Optional<Band<Density>> band(Quantity figure) {
    double slack = figure.toleranceInBase().map(BigFraction::doubleValue).orElse(0.0);
    double low = figure.lowInBase().doubleValue() - slack;
    double high = figure.highInBase().doubleValue() + slack;
    return low > 0
        ? Optional.of(
            Band.spanning(Density.ofGramsPerMillilitre(low), Density.ofGramsPerMillilitre(high)))
        : Optional.empty();
  }
}
