package dev.kettlemark.analysis;

import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A batch that was stored, and for how long it was still good.
 *
 * @param line the {@code kept} line of its trial
 * @param time how long, as written
 */
public record KeptBatch(TrialComparison trial, Statement line, Quantity time) {

  /** The {@code kept} lines of a trial; a line without a time tells nothing. */
  public static Stream<KeptBatch> of(TrialComparison trial) {
    return trial
        .trial()
        .facts()
        .all("kept")
        .flatMap(line -> line
            .objectFigure(Unit.Dimension.TIME)
            .map(time -> new KeptBatch(trial, line, time.value()))
            .stream());
  }

  /** In seconds; of a range the shorter end, since only so long it surely was good. */
  public double seconds() {
    return time.lowInBase().doubleValue();
  }

  /** The temperatures at which it lay; empty where the line does not say. */
  public Optional<Quantity> at() {
    return line.figure(Connective.AT, Unit.Dimension.TEMPERATURE).map(Located::value);
  }

  /** The reading of a quantity that was taken last, by the time that it names. */
  public Optional<TrialReading> last(TrialQuantity quantity) {
    return trial.readings().stream()
        .filter(reading -> reading.measurement().quantity() == quantity)
        .max(Comparator.comparing(reading -> after(reading).orElse(0.0)));
  }

  /** How long after the making something was measured, in seconds. */
  private static Optional<Double> after(TrialReading reading) {
    return reading
        .measurement()
        .line()
        .figure(Connective.AT, Unit.Dimension.TIME)
        .map(time -> time.value().middleInBase().doubleValue());
  }
}
