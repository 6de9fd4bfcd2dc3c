package dev.kettlemark.features;

import dev.kettlemark.text.Cells;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Rows of cells as plain text in columns.
 *
 * <p>All columns but the first are as wide as their widest cell. A first cell that finds no room
 * stands on a line of its own above its row, so that no name is ever cut.
 */
public final class TextTable {

  private static final String GAP = "  ";

  private final int indent;
  private final List<Align> aligns;
  private final List<Line> lines = new ArrayList<>();

  /** How a column's cells stand in it. */
  public enum Align {
    LEFT,
    RIGHT
  }

  /** A row of the table, or a line that stands between rows as it is. */
  private sealed interface Line {
    record Row(List<String> cells) implements Line {}

    record Plain(String text) implements Line {}
  }

  /**
   * An empty table.
   *
   * @param indent spaces before each row
   * @param aligns one for each column
   */
  public TextTable(int indent, Align... aligns) {
    this.indent = indent;
    this.aligns = List.of(aligns);
  }

  /** Adds a row; cells that are not given are empty. */
  public TextTable row(String... cells) {
    lines.add(new Line.Row(Arrays.asList(cells)));
    return this;
  }

  /** Adds a line that takes no part in the columns. */
  public TextTable plain(String text) {
    lines.add(new Line.Plain(text));
    return this;
  }

  /** Adds a text of any length, broken to the width. */
  public TextTable paragraph(String text, int indentOfText, int width) {
    Cells.wrapped(text, width - indentOfText)
        .forEach(line -> plain(" ".repeat(indentOfText) + line));
    return this;
  }

  /** The lines, none of them wider than the width unless a single name is. */
  public List<String> lines(int width) {
    int[] widths = widths();
    int others = Arrays.stream(widths).skip(1).map(w -> w + GAP.length()).sum();
    widths[0] = Math.max(1, Math.min(widths[0], width - indent - others));
    List<String> result = new ArrayList<>();
    for (Line line : lines) {
      if (line instanceof Line.Row row) {
        addRow(result, row.cells(), widths);
      } else {
        result.add(((Line.Plain) line).text());
      }
    }
    return result;
  }

  private int[] widths() {
    int[] widths = new int[aligns.size()];
    for (Line line : lines) {
      if (line instanceof Line.Row row) {
        for (int i = 0; i < row.cells().size(); i++) {
          widths[i] = Math.max(widths[i], Cells.of(row.cells().get(i)));
        }
      }
    }
    return widths;
  }

  private void addRow(List<String> result, List<String> cells, int[] widths) {
    StringBuilder text = new StringBuilder(" ".repeat(indent));
    for (int i = 0; i < cells.size(); i++) {
      String cell = cells.get(i);
      if (i == 0 && Cells.of(cell) > widths[0]) {
        result.add(text + cell);
        cell = "";
      }
      text.append(i == 0 ? "" : GAP);
      text.append(
          aligns.get(i) == Align.LEFT ? Cells.left(cell, widths[i]) : Cells.right(cell, widths[i]));
    }
    result.add(text.toString().stripTrailing());
  }
}
