package dev.kettlemark.sheets;

import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.sheets.SheetFigure.Reach;
import dev.kettlemark.sheets.SheetFigure.Spread;
import java.util.Locale;
import java.util.Optional;

/** How the figures of a sheet look to readers of one language and region. */
final class FigureText {

  /** Binds digits in groups, and a figure to its unit: ISO 80000-1 asks for a small space there. */
  static final String THIN = "\u202f";

  private static final double FAHRENHEIT_PER_CELSIUS = 1.8;
  private static final double GROUPED_FROM = 10_000;

  private final Locale locale;
  private final boolean isFahrenheitFirst;
  private final SheetReader reader;
  private final boolean isFahrenheitShown;
  private final Wording wording;

  FigureText(SheetRequest request, Wording wording) {
    this.locale = request.locale();
    this.isFahrenheitFirst = isFahrenheitFirst(request);
    this.reader = request.reader();
    this.isFahrenheitShown = request.shows().contains("fahrenheit");
    this.wording = wording;
  }

  /** Whether a reader measures in °F before °C. */
  static boolean isFahrenheitFirst(SheetRequest request) {
    return request.locale().getCountry().equals("US");
  }

  /** The figure with its unit, its band or tolerance; why it is unknown is told beside it. */
  String of(SheetFigure figure) {
    return figure
        .reach()
        .fold(reach -> known(figure, reach), unknown -> wording.text("figure.unknown"));
  }

  private String known(SheetFigure figure, Reach reach) {
    return switch (figure.unit()) {
      case CELSIUS -> temperature(figure, reach);
      case SECOND -> time(figure, reach);
      case MILLILITRE -> volume(figure, reach);
      case GRAM -> weight(figure, reach);
      default -> spread(figure, reach, figure.decimals()) + unit(figure.unit(), reach.best());
    };
  }

  private String unit(SheetUnit unit, double value) {
    String key = "unit." + unit.key();
    String one = key + ".one";
    String word = value == 1 && wording.find(one).isPresent()
        ? wording.text(one)
        : wording.find(key).orElse(unit.symbol());
    return word.isEmpty() ? "" : THIN + word;
  }

  /** Kilograms from ten kilograms up, and for the line from one; never fewer digits than in grams. */
  private String weight(SheetFigure figure, Reach reach) {
    double from = reader == SheetReader.PRODUCTION ? 1000 : 10_000;
    if (reach.best() < from) {
      return spread(figure, reach, figure.decimals()) + THIN + "g";
    }
    Reach kilograms = new Reach(reach.low() / 1000, reach.best() / 1000, reach.high() / 1000);
    return spread(figure, kilograms, figure.decimals() + 3) + THIN + "kg";
  }

  /** The best figure with what its ends mean: {@code ≈ 82.1 (80.4–83.8)}, {@code 18–20}, {@code 119 ± 1}. */
  private String spread(SheetFigure figure, Reach reach, int decimals) {
    String low = number(reach.low(), decimals);
    String best = number(reach.best(), decimals);
    String high = number(reach.high(), decimals);
    return switch (figure.spread()) {
      case NONE -> best;
      case RANGE -> low.equals(high) ? best : between(low, high);
      case TOLERANCE -> best + " ± " + trimmed(reach.high() - reach.best());
      case BAND -> low.equals(high) ? "≈ " + best : "≈ " + best + " (" + between(low, high) + ")";
    };
  }

  /** A dash beside a minus sign cannot be read. */
  private static String between(String low, String high) {
    return low.startsWith("-") ? low + " … " + high : low + "–" + high;
  }

  private String temperature(SheetFigure figure, Reach celsius) {
    Reach fahrenheit = new Reach(
        inFahrenheit(celsius.low()), inFahrenheit(celsius.best()), inFahrenheit(celsius.high()));
    String inCelsius = scale(figure, celsius, decimals(celsius, figure), 1) + THIN + "°C";
    String inFahrenheit = scale(figure, fahrenheit, 0, FAHRENHEIT_PER_CELSIUS) + THIN + "°F";
    boolean isSecondShown = isFahrenheitFirst
        || isFahrenheitShown
        || (reader == SheetReader.CHEF && locale.getLanguage().equals("en"));
    if (!isSecondShown) {
      return inCelsius;
    }
    return isFahrenheitFirst
        ? inFahrenheit + " (" + inCelsius + ")"
        : inCelsius + " (" + inFahrenheit + ")";
  }

  private String scale(SheetFigure figure, Reach reach, int decimals, double degree) {
    String best = number(reach.best(), decimals);
    String low = number(reach.low(), decimals);
    String high = number(reach.high(), decimals);
    boolean isOne = low.equals(high);
    return switch (figure.spread()) {
      case NONE -> best;
      case RANGE -> isOne ? best : between(low, high);
      case TOLERANCE -> best + " ± " + trimmed((reach.high() - reach.best()) / degree * degree);
      case BAND -> isOne ? "≈ " + best : "≈ " + between(low, high);
    };
  }

  /** A probe reads tenths; a figure without them needs none. */
  private static int decimals(Reach celsius, SheetFigure figure) {
    boolean isWhole = Math.abs(celsius.best() - Math.rint(celsius.best())) < 1e-6;
    return isWhole ? 0 : Math.min(1, figure.decimals());
  }

  private static double inFahrenheit(double celsius) {
    return Temperature.ofCelsius(celsius).fahrenheit();
  }

  private String time(SheetFigure figure, Reach reach) {
    Stretch stretch = Stretch.of(reach.best());
    Reach shown = new Reach(
        reach.low() / stretch.seconds,
        reach.best() / stretch.seconds,
        reach.high() / stretch.seconds);
    String number = switch (figure.spread()) {
      case NONE -> trimmed(shown.best());
      case BAND -> "≈ " + trimmed(shown.low()) + "–" + trimmed(shown.high());
      case RANGE -> trimmed(shown.low()) + "–" + trimmed(shown.high());
      case TOLERANCE -> trimmed(shown.best()) + " ± " + trimmed(shown.high() - shown.best());
    };
    String key = "unit." + stretch.name().toLowerCase(Locale.ROOT);
    boolean isOne = figure.spread() == Spread.NONE && shown.best() == 1;
    String word = isOne ? wording.find(key + ".one").orElse(wording.text(key)) : wording.text(key);
    return number + THIN + word;
  }

  private enum Stretch {
    SECONDS(1),
    MINUTES(60),
    HOURS(3600),
    DAYS(86_400),
    WEEKS(604_800),
    MONTHS(2_629_746);

    /** So many of one unit are harder to read than a fraction of the next. */
    private static final double MOST = 181;

    private final double seconds;

    Stretch(double seconds) {
      this.seconds = seconds;
    }

    /** The largest of which there are two or more; one that comes out even goes before. */
    static Stretch of(double seconds) {
      Stretch fitting = SECONDS;
      Stretch even = SECONDS;
      for (Stretch stretch : values()) {
        double count = seconds / stretch.seconds;
        if (count >= 2) {
          fitting = stretch;
          even = isNear(count) ? stretch : even;
        }
      }
      return even == SECONDS ? fitting : even;
    }

    /** Whether it is a whole or a half number of them. */
    private static boolean isNear(double count) {
      return Math.abs(2 * count - Math.rint(2 * count)) < 1e-9 && count < MOST;
    }
  }

  private String volume(SheetFigure figure, Reach reach) {
    if (isFahrenheitFirst
        && reader == SheetReader.HOME
        && figure.spread() == Spread.NONE
        && figure.basis() == SheetFigure.Basis.EXACT) {
      return CustomaryVolume.of(reach.best(), wording);
    }
    boolean isLarge = reach.best() >= 1000;
    Reach shown =
        isLarge ? new Reach(reach.low() / 1000, reach.best() / 1000, reach.high() / 1000) : reach;
    boolean isWhole = Math.abs(shown.best() - Math.rint(shown.best())) < 1e-9;
    int decimals = isWhole ? 0 : isLarge ? Math.max(1, figure.decimals()) : figure.decimals();
    return spread(figure, shown, decimals) + THIN + (isLarge ? "L" : "mL");
  }

  private String trimmed(double value) {
    return local(Display.trimmed(value, 1), value);
  }

  private String number(double value, int decimals) {
    return local(Display.fixed(value, decimals), value);
  }

  /** Digits in groups of three from ten thousand up, and the decimal mark of the language. */
  private String local(String plain, double value) {
    String[] parts = plain.split("\\.", 2);
    String whole = Math.abs(value) >= GROUPED_FROM
        ? parts[0].replaceAll("(?<=\\d)(?=(\\d{3})+$)", THIN)
        : parts[0];
    return parts.length == 1 ? whole : whole + mark() + parts[1];
  }

  private String mark() {
    return wording.text("number.mark");
  }

  /** Why a figure is unknown; empty for one that is known. */
  static Optional<Phrase> why(SheetFigure figure) {
    return figure
        .reach()
        .fold(known -> Optional.empty(), unknown -> Optional.of(Phrase.told(unknown.why())));
  }
}
