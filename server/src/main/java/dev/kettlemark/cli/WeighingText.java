package dev.kettlemark.cli;

import static dev.kettlemark.features.TextTable.Align.LEFT;
import static dev.kettlemark.features.TextTable.Align.RIGHT;

import dev.kettlemark.features.TextTable;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.scaling.Scaling;
import dev.kettlemark.scaling.WeighingLine;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.fraction.BigFraction;

/** A scaled formula as a list to weigh by. */
final class WeighingText {

  /** A balance for milligrams shows three. */
  private static final int MOST_DECIMALS = 4;

  private WeighingText() {}

  static List<String> lines(Scaling scaling, int width) {
    List<String> lines = new ArrayList<>(weights(scaling, width));
    lines.add("");
    TextTable table = new TextTable(2, LEFT, RIGHT, RIGHT, LEFT, RIGHT);
    table.row("", "exact", "weigh", "scale", "off by");
    String stage = "";
    for (WeighingLine line : scaling.weighing().lines()) {
      if (!line.stage().equals(stage)) {
        table.plain("stage " + line.stage());
        stage = line.stage();
      }
      table.row(
          line.ingredient(),
          exact(line.grams()),
          reading(line),
          line.scale().map(scale -> scale.name().value()).orElse("any"),
          off(line.roundingError()));
    }
    table.row(
        "sum",
        exact(scaling.batch()),
        Display.trimmed(scaling.weighing().total().doubleValue(), 3) + " g");
    lines.addAll(table.lines(width));
    TextTable notes = new TextTable(0, LEFT);
    for (String note : scaling.notes()) {
      notes.plain("").paragraph(note, 0, width);
    }
    lines.addAll(notes.lines(width));
    return lines;
  }

  /** The three weights, each with what lies between them. */
  private static List<String> weights(Scaling scaling, int width) {
    String slack = scaling.cooked().slack().grams() > 0
        ? " ± " + Display.mass(scaling.cooked().slack())
        : "";
    return new TextTable(2, LEFT, LEFT)
        .row("charge", scaling.batchText())
        .row("cooked", Display.mass(scaling.cooked().mass()) + slack)
        .row("finished", Display.mass(scaling.finished().mass()))
        .lines(width);
  }

  /** Finer than any kitchen scale needs, so that the reading beside it can be judged. */
  private static String exact(BigFraction grams) {
    int decimals = grams.compareTo(BigFraction.ONE) < 0 ? 3 : 2;
    return Display.fixed(grams.doubleValue(), decimals) + " g";
  }

  /** As the scale shows it, with all its decimals. */
  private static String reading(WeighingLine line) {
    int decimals = line.scale().map(scale -> decimals(scale.step())).orElse(2);
    return Display.fixed(line.reading().doubleValue(), decimals) + " g";
  }

  private static int decimals(BigFraction step) {
    int decimals = 0;
    BigFraction shifted = step;
    while (decimals < MOST_DECIMALS && !shifted.getDenominator().equals(BigInteger.ONE)) {
      shifted = shifted.multiply(10);
      decimals++;
    }
    return decimals;
  }

  /** A rounding error, signed; nothing where it cannot be seen. */
  private static String off(Ratio error) {
    String shown = Display.fixed(error.percent(), 1);
    return shown.equals("0.0") ? "" : (error.fraction() > 0 ? "+" : "") + shown + " %";
  }
}
