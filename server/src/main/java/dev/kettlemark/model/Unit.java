package dev.kettlemark.model;

import static dev.kettlemark.model.Unit.Dimension.*;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/**
 * The units of the language, each with its exact factor to the base unit of its dimension.
 *
 * <p>Base units: gram, millilitre, second, metre, degree Celsius, fraction of one. Factors of the
 * customary units are the exact ones of NIST SP 811 (2008), appendix B.8: avoirdupois pound
 * 453.59237 g, US gallon 231 cubic inches of 2.54 cm.
 */
public enum Unit {
  PERCENT("%", SHARE, 1, 100),
  PPM("ppm", SHARE, 1, 1_000_000),
  KILOGRAM("kg", MASS, 1000, 1),
  GRAM("g", MASS, 1, 1),
  MILLIGRAM("mg", MASS, 1, 1000),
  POUND("lb", MASS, 45_359_237, 100_000),
  OUNCE("oz", MASS, 45_359_237, 1_600_000),
  LITRE("L", VOLUME, 1000, 1),
  MILLILITRE("mL", VOLUME, 1, 1),
  CUP("cup", VOLUME, 473_176_473, 2_000_000),
  FLUID_OUNCE("fl-oz", VOLUME, 473_176_473, 16_000_000),
  TABLESPOON("tbsp", VOLUME, 473_176_473, 32_000_000),
  TEASPOON("tsp", VOLUME, 473_176_473, 96_000_000),
  EACH("each", COUNT, 1, 1),
  PIECES("pieces", COUNT, 1, 1),
  CELSIUS("°C", TEMPERATURE, 1, 1),
  FAHRENHEIT("°F", TEMPERATURE, 5, 9),
  SECOND("s", TIME, 1, 1),
  MINUTE("min", TIME, 60, 1),
  HOUR("h", TIME, 3600, 1),
  DAYS("days", TIME, 86_400, 1),
  WEEKS("weeks", TIME, 604_800, 1),
  MONTHS("months", TIME, 2_629_746, 1),
  METRE("m", LENGTH, 1, 1),
  CENTIMETRE("cm", LENGTH, 1, 100),
  MILLIMETRE("mm", LENGTH, 1, 1000),
  GRAM_PER_MILLILITRE("g/mL", DENSITY, 1, 1),
  RELATIVE_HUMIDITY("%RH", HUMIDITY, 1, 100),
  BRIX("Brix", SHARE, 1, 100),
  PH("pH", ACIDITY, 1, 1),
  WATER_ACTIVITY("aw", ACTIVITY, 1, 1);

  /** What a unit measures. */
  public enum Dimension {
    SHARE,
    MASS,
    VOLUME,
    COUNT,
    TEMPERATURE,
    TIME,
    LENGTH,
    DENSITY,
    HUMIDITY,
    ACIDITY,
    ACTIVITY
  }

  private static final Map<String, Unit> BY_WORD = new HashMap<>();
  private static final Map<String, Unit> BY_FOLDED_WORD = new HashMap<>();

  static {
    for (Unit unit : values()) {
      BY_WORD.put(unit.symbol, unit);
    }
    BY_WORD.put("degC", CELSIUS);
    BY_WORD.put("degF", FAHRENHEIT);
    BY_WORD.put("cups", CUP);
    BY_WORD.put("piece", PIECES);
    BY_WORD.put("day", DAYS);
    BY_WORD.put("week", WEEKS);
    BY_WORD.put("month", MONTHS);
    BY_WORD.forEach(
        (word, unit) -> BY_FOLDED_WORD.putIfAbsent(word.toLowerCase(Locale.ROOT), unit));
  }

  private final String symbol;
  private final Dimension dimension;

  @SuppressWarnings("ImmutableEnumChecker") // BigFraction is immutable, but says so nowhere.
  private final BigFraction factor;

  Unit(String symbol, Dimension dimension, long numerator, long denominator) {
    this.symbol = symbol;
    this.dimension = dimension;
    this.factor = new BigFraction(numerator, denominator);
  }

  /** The unit of a word of the text, spelled exactly. */
  public static Optional<Unit> of(String word) {
    return Optional.ofNullable(BY_WORD.get(word));
  }

  /** The unit that a word means if capitals are overlooked, for instance {@code KG} or {@code ML}. */
  public static Optional<Unit> overlookingCase(String word) {
    return Optional.ofNullable(BY_FOLDED_WORD.get(word.toLowerCase(Locale.ROOT)));
  }

  public String symbol() {
    return symbol;
  }

  /** Every spelling of the unit that the text may use, the symbol first. */
  public List<String> spellings() {
    Stream<String> others = BY_WORD.entrySet().stream()
        .filter(entry -> entry.getValue() == this && !entry.getKey().equals(symbol))
        .map(Map.Entry::getKey)
        .sorted();
    return Stream.concat(Stream.of(symbol), others).toList();
  }

  public Dimension dimension() {
    return dimension;
  }

  /** Exact number of base units in one of this unit; for °F the size of the degree. */
  public BigFraction factor() {
    return factor;
  }

  public boolean measures(Dimension other) {
    return dimension == other;
  }
}
