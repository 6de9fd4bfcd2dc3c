package dev.kettlemark.features;

import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hipparchus.fraction.BigFraction;

/** A figure in the unit that a scale, a clock or a ruler shows. */
final class UnitHover implements HoverAnswer {

  /** The unit in which each other one is told: the base unit, for times and lengths the next finer one. */
  private static final Map<Unit, Unit> TOLD_IN = toldIn();

  /** Units that differ from land to land. */
  private static final Set<Unit> CUSTOMARY =
      EnumSet.of(Unit.CUP, Unit.FLUID_OUNCE, Unit.TABLESPOON, Unit.TEASPOON);

  /** More digits than any scale shows. */
  private static final int DECIMALS = 4;

  @Override
  public Optional<HoverText> to(Pointed pointed) {
    return pointed
        .figure()
        .flatMap(figure -> figure
            .quantity()
            .flatMap(UnitHover::inBase)
            .map(told -> pointed.text(new Markdown().paragraph(told), figure.span())));
  }

  /** The figure in that unit; empty where it is in it already. */
  static Optional<String> inBase(Quantity written) {
    Optional<Unit> unit = written.unit();
    Optional<Unit> base = unit.map(TOLD_IN::get);
    if (unit.isEmpty() || base.isEmpty()) {
      return Optional.empty();
    }
    BigFraction scale = unit.get().factor().divide(base.get().factor());
    String low = figure(written.low().multiply(scale));
    String high = figure(written.high().multiply(scale));
    String one = "1 " + singular(unit.get()) + " is exactly " + exact(scale) + " "
        + base.get().symbol();
    return Optional.of("**" + (low.equals(high) ? low : low + "–" + high) + " "
        + base.get().symbol() + "** (" + one
        + (CUSTOMARY.contains(unit.get()) ? ", as in the United States" : "") + ")");
  }

  private static Map<Unit, Unit> toldIn() {
    Map<Unit, Unit> told = new EnumMap<>(Unit.class);
    for (Unit unit : List.of(Unit.KILOGRAM, Unit.MILLIGRAM, Unit.POUND, Unit.OUNCE)) {
      told.put(unit, Unit.GRAM);
    }
    for (Unit unit :
        List.of(Unit.LITRE, Unit.CUP, Unit.FLUID_OUNCE, Unit.TABLESPOON, Unit.TEASPOON)) {
      told.put(unit, Unit.MILLILITRE);
    }
    told.put(Unit.PPM, Unit.PERCENT);
    told.put(Unit.BRIX, Unit.PERCENT);
    told.put(Unit.MINUTE, Unit.SECOND);
    told.put(Unit.HOUR, Unit.MINUTE);
    told.put(Unit.DAYS, Unit.HOUR);
    told.put(Unit.WEEKS, Unit.DAYS);
    told.put(Unit.MONTHS, Unit.DAYS);
    told.put(Unit.METRE, Unit.CENTIMETRE);
    told.put(Unit.CENTIMETRE, Unit.MILLIMETRE);
    told.put(Unit.MILLIMETRE, Unit.CENTIMETRE);
    return told;
  }

  private static String singular(Unit unit) {
    return unit == Unit.DAYS || unit == Unit.WEEKS || unit == Unit.MONTHS
        ? unit.symbol().substring(0, unit.symbol().length() - 1)
        : unit.symbol();
  }

  private static String figure(BigFraction value) {
    return Display.trimmed(value.doubleValue(), DECIMALS);
  }

  private static String exact(BigFraction scale) {
    return Display.trimmed(scale.doubleValue(), 12);
  }
}
