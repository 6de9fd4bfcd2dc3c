package dev.kettlemark.features;

import dev.kettlemark.features.Columns.PlacedRow;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.text.Cells;
import java.util.List;
import java.util.function.ToIntFunction;

/**
 * The columns of a stage's amounts: points below points, units below units, names below names.
 *
 * @param point column behind the whole digits
 * @param numberEnd column behind the decimals
 * @param basis column at which {@code of …} starts
 * @param name column of the names
 * @param circumstances column of what follows a name
 */
record AmountColumns(int point, int numberEnd, int basis, int name, int circumstances) {

  /** Names and temperatures of stages with usual figures start here, so that stages look alike. */
  private static final int USUAL_NAME = 22;

  private static final int USUAL_CIRCUMSTANCES = 43;

  private static final int INDENTATION = 2;

  /** Percentages have up to two digits before the point. */
  private static final int USUAL_WHOLE = 2;

  private static final int NUMBER = 0;
  private static final int UNIT = 1;
  private static final int BASIS = 2;
  /** The cell of the name; those before it make the measure. */
  static final int NAME = 3;

  private static final int CIRCUMSTANCES = 4;

  static AmountColumns of(List<Row> rows) {
    int fraction = most(rows, row -> isFigure(row) ? width(row, NUMBER) - wholeWidth(row) : 0);
    int whole = Math.max(
        USUAL_WHOLE,
        most(
            rows,
            row ->
                isFigure(row) ? wholeWidth(row) : isTake(row) ? 0 : width(row, NUMBER) - fraction));
    int point = INDENTATION + whole;
    int numberEnd = point + fraction;
    int basis = numberEnd + 2 + most(rows, row -> width(row, UNIT));
    AmountColumns narrow = new AmountColumns(point, numberEnd, basis, 0, 0);
    int name = Math.max(USUAL_NAME, most(rows, narrow::measureEnd) + 2);
    int circumstances = Math.max(
        USUAL_CIRCUMSTANCES,
        most(rows, row -> width(row, CIRCUMSTANCES) > 0 ? name + width(row, NAME) + 2 : 0));
    return new AmountColumns(point, numberEnd, basis, name, circumstances);
  }

  List<PlacedRow> place(List<Row> rows) {
    return rows.stream()
        .map(row -> new PlacedRow(
            row, List.of(numberStart(row), numberEnd + 1, basis, name, circumstances)))
        .toList();
  }

  private int numberStart(Row row) {
    if (isTake(row)) {
      return INDENTATION;
    }
    return isFigure(row) ? point - wholeWidth(row) : numberEnd - width(row, NUMBER);
  }

  private int measureEnd(Row row) {
    if (width(row, BASIS) > 0) {
      return basis + width(row, BASIS);
    }
    return width(row, UNIT) > 0
        ? numberEnd + 1 + width(row, UNIT)
        : numberStart(row) + width(row, NUMBER);
  }

  private static int most(List<Row> rows, ToIntFunction<Row> size) {
    return rows.stream().mapToInt(size).max().orElse(0);
  }

  private static int width(Row row, int cell) {
    return row.cells().get(cell).width();
  }

  private static boolean isTake(Row row) {
    return row.line().line() instanceof Line.TakeLine;
  }

  private static boolean isFigure(Row row) {
    return row.line().line() instanceof Line.AmountLine;
  }

  /** Width before the decimal point; a range or a fraction ends where whole numbers end. */
  private static int wholeWidth(Row row) {
    String number = row.cells().get(NUMBER).words().get(0);
    int point = number.indexOf('.');
    boolean single = number.indexOf('-', 1) < 0 && number.indexOf('–', 1) < 0;
    return Cells.of(single && point >= 0 ? number.substring(0, point) : number);
  }
}
