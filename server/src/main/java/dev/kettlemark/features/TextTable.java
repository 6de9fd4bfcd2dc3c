package dev.kettlemark.features;

import dev.kettlemark.text.Cells;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

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
  private boolean isWrapping;

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

  /** Breaks cells at spaces where all columns together find no room. */
  public TextTable wrapping() {
    isWrapping = true;
    return this;
  }

  /** The lines, none of them wider than the width unless a single name is. */
  public List<String> lines(int width) {
    return isWrapping ? wrappedLines(width) : rowLines(width);
  }

  private List<String> wrappedLines(int width) {
    int[] widths = new ColumnWidths(rows(), aligns).within(width - indent, GAP.length());
    boolean isFitting =
        Arrays.stream(widths).sum() + GAP.length() * (widths.length - 1) <= width - indent;
    return isFitting ? columns(widths) : namesAbove(width);
  }

  /** Where long words leave no room for all columns, the first cell stands above its row. */
  private List<String> namesAbove(int width) {
    TextTable others =
        new TextTable(indent + GAP.length(), aligns.stream().skip(1).toArray(Align[]::new));
    for (Line line : lines) {
      if (line instanceof Line.Row row) {
        others.paragraph(row.cells().get(0), indent, width);
        others.row(row.cells().stream().skip(1).toArray(String[]::new));
      } else {
        others.plain(((Line.Plain) line).text());
      }
    }
    int[] widths =
        new ColumnWidths(others.rows(), others.aligns).within(width - others.indent, GAP.length());
    return others.columns(widths);
  }

  private List<String> columns(int[] widths) {
    List<String> result = new ArrayList<>();
    for (Line line : lines) {
      if (line instanceof Line.Row row) {
        addWrapped(result, row.cells(), widths);
      } else {
        result.add(((Line.Plain) line).text());
      }
    }
    return result;
  }

  private List<List<String>> rows() {
    return lines.stream()
        .flatMap(line -> line instanceof Line.Row row ? Stream.of(row.cells()) : Stream.empty())
        .toList();
  }

  private void addWrapped(List<String> result, List<String> cells, int[] widths) {
    List<List<String>> wrapped = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      wrapped.add(Cells.wrapped(cells.get(i), widths[i]));
    }
    int height = wrapped.stream().mapToInt(List::size).max().orElse(0);
    for (int at = 0; at < height; at++) {
      StringBuilder text = new StringBuilder(" ".repeat(indent));
      for (int i = 0; i < wrapped.size(); i++) {
        String cell = at < wrapped.get(i).size() ? wrapped.get(i).get(at) : "";
        text.append(i == 0 ? "" : GAP).append(aligned(cell, i, widths[i]));
      }
      result.add(text.toString().stripTrailing());
    }
  }

  private String aligned(String cell, int column, int width) {
    return aligns.get(column) == Align.LEFT ? Cells.left(cell, width) : Cells.right(cell, width);
  }

  private List<String> rowLines(int width) {
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
      text.append(i == 0 ? "" : GAP).append(aligned(cell, i, widths[i]));
    }
    String row = text.toString().stripTrailing();
    // A name that stood on a line of its own and had nothing beside it is told already.
    if (!row.isEmpty() || cells.stream().allMatch(String::isEmpty)) {
      result.add(row);
    }
  }
}
