package dev.kettlemark.sheets;

import dev.kettlemark.model.Quantity;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.sheets.Block.Row;
import dev.kettlemark.sheets.SheetFigure.Basis;
import dev.kettlemark.sheets.SheetFigure.Reach;
import dev.kettlemark.sheets.SheetFigure.Spread;
import java.util.List;
import java.util.Optional;

/**
 * A figure that a line decides by.
 *
 * @param point where it is read, and what
 * @param range what is aimed at and what is still right
 * @param with what it is read with
 * @param below what to do when it is less
 * @param above what to do when it is more
 */
record Limit(Phrase point, Range range, Phrase with, List<Phrase> below, List<Phrase> above) {

  Limit {
    below = List.copyOf(below);
    above = List.copyOf(above);
  }

  /** What is aimed at and between what it may lie; each of the three may be missing. */
  record Range(
      Optional<SheetFigure> target, Optional<SheetFigure> low, Optional<SheetFigure> high) {

    /** As a line writes it: of a range both ends, of a tolerance the middle as well. */
    static Range of(SheetFigure written, String id) {
      boolean isTarget = written.spread() != Spread.RANGE;
      boolean isLimited = written.spread() != Spread.NONE;
      return new Range(
          isTarget ? Optional.of(one(written, id + ".target", Which.BEST)) : Optional.empty(),
          isLimited ? Optional.of(one(written, id + ".lower", Which.LOW)) : Optional.empty(),
          isLimited ? Optional.of(one(written, id + ".upper", Which.HIGH)) : Optional.empty());
    }

    /** A figure as a line writes it; nothing for one that no sheet knows. */
    static Optional<Range> of(Quantity written, String id) {
      return SheetFigure.of(id, written).map(figure -> of(figure, id));
    }

    static Range ofTarget(SheetFigure target) {
      return new Range(Optional.of(target), Optional.empty(), Optional.empty());
    }

    Range withTarget(SheetFigure other) {
      return new Range(Optional.of(other), low, high);
    }

    Range within(SheetFigure lower, SheetFigure upper) {
      return new Range(target, Optional.of(lower), Optional.of(upper));
    }

    /** The figure from which on something is too low; that of the target where no limit is known. */
    Optional<Double> lowest() {
      return low.or(() -> target).flatMap(figure -> best(figure));
    }

    Optional<Double> highest() {
      return high.or(() -> target).flatMap(figure -> best(figure));
    }

    /** What is aimed at, or the middle of what is right. */
    Optional<Double> middle() {
      return target
          .flatMap(Range::best)
          .or(() -> lowest().flatMap(one -> highest().map(other -> (one + other) / 2)));
    }

    private static Optional<Double> best(SheetFigure figure) {
      return figure.reach().map(Reach::best).toOptional();
    }

    private enum Which {
      LOW,
      BEST,
      HIGH
    }

    private static SheetFigure one(SheetFigure written, String id, Which which) {
      Outcome<Reach> reach = written
          .reach()
          .map(all -> Reach.of(
              switch (which) {
                case LOW -> all.low();
                case BEST -> all.best();
                case HIGH -> all.high();
              }));
      return new SheetFigure(
          id, written.unit(), reach, Spread.NONE, written.decimals(), written.basis());
    }
  }

  /** A limit that no line writes. */
  static SheetFigure unwritten(SheetFigure like, String id, double value, Basis basis) {
    return new SheetFigure(
        id, like.unit(), Outcome.known(Reach.of(value)), Spread.NONE, like.decimals(), basis);
  }

  /** The figures in a row, and under it what to do. */
  List<Row> rows() {
    return List.of(
        Row.of(point, shown(range.target()), shown(range.low()), shown(range.high()), with),
        Row.across(Phrase.words("limits.below"), told(below)),
        Row.across(Phrase.words("limits.above"), told(above)));
  }

  private static Phrase shown(Optional<SheetFigure> figure) {
    return figure.map(Phrase::value).orElseGet(() -> Phrase.given("–"));
  }

  private static Phrase told(List<Phrase> sentences) {
    return sentences.isEmpty() ? Phrase.sentence("limits.nothing") : new Phrase.Together(sentences);
  }
}
