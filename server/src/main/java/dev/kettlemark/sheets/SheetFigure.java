package dev.kettlemark.sheets;

import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * A figure on a sheet, not yet shown.
 *
 * @param id by which the same figure is found in every form of the sheet
 * @param unit in which {@code reach} is held
 * @param reach the figure with its ends; unknown with its reason
 * @param spread what the two ends mean
 * @param decimals how many digits behind the point a reader sees, in {@code unit}
 * @param basis where it comes from
 */
public record SheetFigure(
    String id, SheetUnit unit, Outcome<Reach> reach, Spread spread, int decimals, Basis basis) {

  /** A figure between its two ends; all three are the same where nothing is left open. */
  public record Reach(double low, double best, double high) {

    public static Reach of(double value) {
      return new Reach(value, value, value);
    }
  }

  /** What the ends of a figure mean. */
  public enum Spread {
    /** It has none. */
    NONE,
    /** Anything between them is right. */
    RANGE,
    /** So far it may be off. */
    TOLERANCE,
    /** Somewhere between them the model expects it. */
    BAND
  }

  /** Where a figure comes from. */
  public enum Basis {
    WRITTEN,
    EXACT,
    MODEL,
    MEASURED,
    PRACTICE;

    String key() {
      return "basis." + name().toLowerCase(Locale.ROOT);
    }
  }

  public static SheetFigure exact(String id, SheetUnit unit, double value, int decimals) {
    return new SheetFigure(
        id, unit, Outcome.known(Reach.of(value)), Spread.NONE, decimals, Basis.EXACT);
  }

  static SheetFigure written(String id, SheetUnit unit, double value, int decimals) {
    return new SheetFigure(
        id, unit, Outcome.known(Reach.of(value)), Spread.NONE, decimals, Basis.WRITTEN);
  }

  public static SheetFigure model(String id, SheetUnit unit, Outcome<Reach> reach, int decimals) {
    return new SheetFigure(id, unit, reach, Spread.BAND, decimals, Basis.MODEL);
  }

  /** A share that a line of a formula asks for. */
  public static SheetFigure percent(String id, Outcome<Double> fraction) {
    int decimals = fraction.map(f -> f > 0 && f < 0.001 ? 3 : 2).orElse(2);
    return new SheetFigure(
        id,
        SheetUnit.PERCENT,
        fraction.map(f -> Reach.of(100 * f)),
        Spread.NONE,
        decimals,
        Basis.EXACT);
  }

  static SheetFigure estimate(String id, Outcome<Mass> mass, Mass slack) {
    return model(
        id,
        SheetUnit.GRAM,
        mass.map(m -> new Reach(m.minus(slack).grams(), m.grams(), m.plus(slack).grams())),
        mass.map(m -> m.grams() < 100 ? 1 : 0).orElse(0));
  }

  public static SheetFigure share(String id, Outcome<Band<Ratio>> band, int decimals) {
    return model(id, SheetUnit.PERCENT, band.map(b -> reach(b, Ratio::percent)), decimals);
  }

  public static SheetFigure activity(String id, Outcome<Band<Ratio>> band) {
    return model(id, SheetUnit.WATER_ACTIVITY, band.map(b -> reach(b, Ratio::fraction)), 2);
  }

  public static SheetFigure heat(String id, Outcome<Band<Temperature>> band) {
    return model(id, SheetUnit.CELSIUS, band.map(b -> reach(b, Temperature::celsius)), 0);
  }

  public static <T extends Comparable<? super T>> Reach reach(
      Band<T> band, Function<T, Double> figure) {
    double low = figure.apply(band.low());
    double high = figure.apply(band.high());
    return new Reach(low, (low + high) / 2, high);
  }

  /** A figure as a line writes it; empty where it has no unit that a sheet knows. */
  static Optional<SheetFigure> of(String id, Quantity quantity) {
    return quantity.unit().flatMap(unit -> scale(unit.dimension())).map(scale -> {
      double factor = scale.factor();
      double low = quantity.lowInBase().doubleValue() * factor;
      double high = quantity.highInBase().doubleValue() * factor;
      double best = (low + high) / 2;
      Optional<Double> tolerance = quantity.toleranceInBase().map(t -> t.doubleValue() * factor);
      Reach reach = tolerance
          .map(off -> new Reach(best - off, best, best + off))
          .orElseGet(() -> new Reach(low, best, high));
      Spread spread = tolerance.isPresent()
          ? Spread.TOLERANCE
          : quantity.isRange() ? Spread.RANGE : Spread.NONE;
      int decimals = quantity.unit().filter(u -> u == Unit.FAHRENHEIT).isPresent()
          ? Math.max(1, quantity.decimals())
          : quantity.decimals();
      return new SheetFigure(
          id, scale.unit(), Outcome.known(reach), spread, decimals, Basis.WRITTEN);
    });
  }

  private record Scale(SheetUnit unit, double factor) {}

  private static Optional<Scale> scale(Unit.Dimension dimension) {
    return switch (dimension) {
      case SHARE -> Optional.of(new Scale(SheetUnit.PERCENT, 100));
      case MASS -> Optional.of(new Scale(SheetUnit.GRAM, 1));
      case VOLUME -> Optional.of(new Scale(SheetUnit.MILLILITRE, 1));
      case COUNT -> Optional.of(new Scale(SheetUnit.PIECE, 1));
      case TEMPERATURE -> Optional.of(new Scale(SheetUnit.CELSIUS, 1));
      case TIME -> Optional.of(new Scale(SheetUnit.SECOND, 1));
      case LENGTH -> Optional.of(new Scale(SheetUnit.MILLIMETRE, 1000));
      case DENSITY -> Optional.of(new Scale(SheetUnit.GRAM_PER_MILLILITRE, 1));
      case HUMIDITY -> Optional.of(new Scale(SheetUnit.RELATIVE_HUMIDITY, 100));
      case ACIDITY -> Optional.of(new Scale(SheetUnit.PH, 1));
      case ACTIVITY -> Optional.of(new Scale(SheetUnit.WATER_ACTIVITY, 1));
    };
  }
}
