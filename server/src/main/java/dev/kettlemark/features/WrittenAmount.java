package dev.kettlemark.features;

import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.TakeLine;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import java.util.Optional;

/** Amounts in the words of the language, as their author wrote them. */
final class WrittenAmount {

  private WrittenAmount() {}

  /** The amount of a line with its basis where one is written: {@code 0.40 % of liquid}. */
  static String of(AmountLine line) {
    Measure measure = line.measure().value();
    if (measure instanceof Measure.Sufficient) {
      return "q.s.";
    }
    String figure = line.written().map(WrittenAmount::of).orElse("?");
    Optional<Basis> basis =
        measure instanceof Measure.Share share ? share.basis() : Optional.empty();
    return basis.map(b -> figure + " of " + b.words()).orElse(figure);
  }

  /** What a line takes of an earlier stage: {@code all of}, {@code part 1/3 of}. */
  static String of(TakeLine take) {
    return take.share().doubleValue() == 1
        ? "all of"
        : "part " + take.share().getNumerator() + "/" + take.share().getDenominator() + " of";
  }

  private static String of(Quantity quantity) {
    String figure = quantity.isRange()
        ? figure(quantity.low().doubleValue(), quantity)
            + "–"
            + figure(quantity.high().doubleValue(), quantity)
        : figure(quantity.low().doubleValue(), quantity);
    return quantity.unit().map(Unit::symbol).map(unit -> figure + " " + unit).orElse(figure);
  }

  private static String figure(double value, Quantity quantity) {
    return Display.fixed(value, quantity.decimals());
  }
}
