package dev.kettlemark.sheets;

import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.sheets.Difference.Kind;
import dev.kettlemark.sheets.SheetFigure.Basis;
import dev.kettlemark.sheets.SheetFigure.Reach;
import dev.kettlemark.sheets.SheetFigure.Spread;
import java.util.Locale;

/**
 * One figure of two formulas.
 *
 * @param word what it is a figure of
 */
public record Pair(String word, SheetFigure first, SheetFigure second) {

  public Difference difference() {
    return Difference.of(first, second);
  }

  /** Whether anything is known of it. */
  public boolean isKnown() {
    return first.reach().isKnown() || second.reach().isKnown();
  }

  /** The difference in words. */
  public Phrase told() {
    Difference difference = difference();
    String key = "difference." + difference.kind().name().toLowerCase(Locale.ROOT);
    return difference.kind() == Kind.OPEN && difference.by() < 0
        ? Phrase.words("difference.open.less", Phrase.value(by(difference)))
        : Phrase.words(key, Phrase.value(by(difference)));
  }

  /** How far the two are apart, without a sign. */
  private SheetFigure by(Difference difference) {
    SheetUnit unit = switch (first.unit()) {
      case PERCENT -> SheetUnit.POINT;
      case CELSIUS -> SheetUnit.DEGREE;
      default -> first.unit();
    };
    return new SheetFigure(
        "difference." + word,
        unit,
        Outcome.known(Reach.of(Math.abs(difference.by()))),
        Spread.NONE,
        Math.max(first.decimals(), second.decimals()),
        Basis.EXACT);
  }
}
