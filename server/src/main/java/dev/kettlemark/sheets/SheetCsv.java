package dev.kettlemark.sheets;

import dev.kettlemark.quantity.Outcome;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * The figures of a sheet as a table of RFC 4180, with a point in every number whatever the language.
 *
 * <p>A text that a spreadsheet would take for a formula gets an apostrophe in front.
 */
public final class SheetCsv {

  private static final List<String> COLUMNS =
      List.of("id", "value", "low", "high", "unit", "spread", "basis", "shown", "unknown");

  private SheetCsv() {}

  public static String of(SheetContent sheet) {
    StringBuilder out = new StringBuilder(line(COLUMNS));
    for (SheetFigure figure : sheet.figures()) {
      out.append(line(List.of(
          figure.id(),
          number(figure, SheetFigure.Reach::best),
          number(figure, SheetFigure.Reach::low),
          number(figure, SheetFigure.Reach::high),
          figure.unit().symbol(),
          figure.spread().name().toLowerCase(Locale.ROOT),
          figure.basis().name().toLowerCase(Locale.ROOT),
          sheet.speech().text(figure),
          figure.reach() instanceof Outcome.Unknown<SheetFigure.Reach> unknown
              ? unknown.because()
              : "")));
    }
    return out.toString();
  }

  private static String number(SheetFigure figure, ToDoubleFunction<SheetFigure.Reach> end) {
    return figure
        .reach()
        .map(reach -> Double.toString(end.applyAsDouble(reach)))
        .orElse("");
  }

  private static String line(List<String> cells) {
    return cells.stream().map(SheetCsv::cell).collect(Collectors.joining(",")) + "\r\n";
  }

  private static String cell(String text) {
    boolean isRisky = text.matches("(?s)[=+@\t\r].*") || text.matches("(?s)-(?![0-9]).*");
    String safe = isRisky ? "'" + text : text;
    return safe.matches("(?s).*[\",\r\n].*") ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
  }
}
