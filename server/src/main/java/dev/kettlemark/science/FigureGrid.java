package dev.kettlemark.science;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * A table of figures as it is printed, with how fine each figure is.
 *
 * <p>The first line names the columns, every other line starts with the figure it stands for; bars part the cells and a
 * dash leaves one empty.
 */
final class FigureGrid {

  private static final String EMPTY = "-";

  private final List<Cell> cells;

  private FigureGrid(List<Cell> cells) {
    this.cells = cells;
  }

  /**
   * One figure of the table.
   *
   * @param row what its line stands for
   * @param column what its column stands for
   * @param figure as printed
   * @param lastDigit one in its last printed digit
   */
  record Cell(double row, String column, double figure, double lastDigit) {}

  static FigureGrid of(String text) {
    List<String> lines = text.lines().toList();
    List<String> columns = split(lines.get(0));
    List<Cell> cells = new ArrayList<>();
    for (String line : lines.subList(1, lines.size())) {
      List<String> figures = split(line);
      if (figures.size() != columns.size()) {
        throw new IllegalArgumentException("a line of another width: " + line);
      }
      for (int i = 1; i < figures.size(); i++) {
        if (!figures.get(i).equals(EMPTY)) {
          cells.add(cell(figures.get(0), columns.get(i), figures.get(i)));
        }
      }
    }
    return new FigureGrid(List.copyOf(cells));
  }

  Stream<Cell> cells() {
    return cells.stream();
  }

  private static Cell cell(String row, String column, String figure) {
    int point = figure.indexOf('.');
    int decimals = point < 0 ? 0 : figure.length() - point - 1;
    return new Cell(
        Double.parseDouble(row), column, Double.parseDouble(figure), Math.pow(10, -decimals));
  }

  private static List<String> split(String line) {
    return Arrays.stream(line.split("\\|", -1)).map(String::strip).toList();
  }
}
