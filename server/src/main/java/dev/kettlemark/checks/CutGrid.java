package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Volume;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Pieces cut from a slab in a frame.
 *
 * @param cut the step
 * @param first the first figure of the size as written
 * @param length of a piece, in millimetres
 * @param width of a piece, in millimetres
 * @param frame that the slab lies in
 */
record CutGrid(
    Statement cut, Located<Quantity> first, double length, double width, House.Frame frame) {

  static Optional<CutGrid> of(ComputedFormula formula, Statement cut) {
    List<Located<Quantity>> sides = cut.objects().stream()
        .flatMap(operand -> operand.value() instanceof Operand.Figure figure
            ? Stream.of(new Located<>(figure.quantity(), operand.span()))
            : Stream.empty())
        .toList();
    Optional<Unit> unit = sides.size() == 2
        ? sides.get(1).value().unit().filter(found -> found.measures(Unit.Dimension.LENGTH))
        : Optional.empty();
    boolean isSize = sides.stream().allMatch(side -> side.value().low().signum() > 0);
    return unit.filter(found -> isSize)
        .flatMap(found -> frame(formula).map(frame -> {
          double millimetres = found.factor().doubleValue() * 1000;
          return new CutGrid(
              cut,
              sides.get(0),
              sides.get(0).value().middle().doubleValue() * millimetres,
              sides.get(1).value().middle().doubleValue() * millimetres,
              frame);
        }));
  }

  private static Optional<House.Frame> frame(ComputedFormula formula) {
    return formula
        .formula()
        .steps()
        .filter(step -> step.is("deposit") || step.is("spread"))
        .flatMap(step -> step.names(Connective.INTO).stream())
        .flatMap(
            name -> formula.kitchen().house().flatMap(house -> house.frame(name.value())).stream())
        .reduce((one, later) -> later);
  }

  /** The room that a piece takes in a frame that is filled to its rim. */
  Volume volume() {
    return Volume.ofMillilitres(length * width * frame.height() / 1000);
  }

  /** How many pieces a frame gives, laid the better way round. */
  int pieces() {
    return Math.max(count(length, width), count(width, length));
  }

  private int count(double along, double across) {
    return (int)
        (Math.floor(frame.length() / along + 1e-9) * Math.floor(frame.width() / across + 1e-9));
  }

  /** The share of a slab that is left over at its edges. */
  Ratio waste() {
    return Ratio.ofFraction(
        Math.max(0, 1 - pieces() * length * width / (frame.length() * frame.width())));
  }
}
