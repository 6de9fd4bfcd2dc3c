package dev.kettlemark.cli;

import dev.kettlemark.features.TextTable;
import dev.kettlemark.sheets.Block;
import dev.kettlemark.sheets.Block.Column;
import dev.kettlemark.sheets.Block.Row;
import dev.kettlemark.sheets.Leaf;
import dev.kettlemark.sheets.Phrase;
import dev.kettlemark.text.Cells;
import java.util.ArrayList;
import java.util.List;

/** A page in the look of a sheet as lines for a terminal. */
final class LeafText {

  private final Leaf leaf;
  private final Paint paint;
  private final int width;
  private final List<String> lines = new ArrayList<>();

  private LeafText(Leaf leaf, Paint paint, int width) {
    this.leaf = leaf;
    this.paint = paint;
    this.width = width;
  }

  /** The page, one line to each string. */
  static String of(Leaf leaf, Paint paint, int width) {
    LeafText text = new LeafText(leaf, paint, width);
    text.write();
    return String.join("\n", text.lines) + "\n";
  }

  private void write() {
    heading(leaf.text(leaf.title()));
    leaf.marks().forEach(mark -> wrapped(leaf.text(mark), ""));
    for (Leaf.Section section : leaf.sections()) {
      lines.add("");
      heading(leaf.text(section.heading()));
      section.blocks().forEach(this::block);
    }
    lines.add("");
    leaf.foot().forEach(this::block);
  }

  private void heading(String text) {
    Cells.wrapped(Visible.of(text), width).forEach(line -> lines.add(paint.bold(line)));
  }

  private void wrapped(String text, String indent) {
    Cells.wrapped(Visible.of(text), width - indent.length())
        .forEach(line -> lines.add(indent + line));
  }

  private void block(Block block) {
    if (block instanceof Block.Lines told) {
      told.lines().forEach(line -> wrapped(leaf.text(line), ""));
    } else if (block instanceof Block.Points points) {
      points.points().forEach(point -> item("- ", leaf.text(point)));
    } else if (block instanceof Block.Terms terms) {
      terms
          .terms()
          .forEach(term -> item("", leaf.text(term.word()) + ": " + leaf.text(term.told())));
    } else if (block instanceof Block.Grid grid) {
      table(grid);
    }
  }

  private void item(String mark, String text) {
    List<String> told = Cells.wrapped(Visible.of(text), width - 2);
    for (int i = 0; i < told.size(); i++) {
      lines.add((i == 0 ? mark : " ".repeat(mark.length())) + told.get(i));
    }
  }

  /** A last column of whole sentences stands below its row: no terminal is wide enough for it. */
  private void table(Block.Grid grid) {
    boolean isTold = isLong(grid);
    int shown = grid.columns().size() - (isTold ? 1 : 0);
    TextTable.Align[] aligns = grid.columns().stream()
        .limit(shown)
        .skip(1)
        .map(column ->
            column.holds() == Column.Holds.FIGURE ? TextTable.Align.RIGHT : TextTable.Align.LEFT)
        .toArray(TextTable.Align[]::new);
    TextTable table = new TextTable(0, all(aligns)).wrapping();
    table.row(cells(grid.columns().stream().map(Column::heading).limit(shown).toList()));
    for (Row row : grid.rows()) {
      if (row.rank() == Row.Rank.GROUP) {
        table.paragraph(Visible.of(leaf.text(row.cells().get(0))), 0, width);
        continue;
      }
      table.row(cells(row.cells().stream().limit(shown).toList()));
      if (isTold) {
        table.paragraph(Visible.of(leaf.text(row.cells().get(shown))), 4, width);
      }
    }
    table.lines(width).forEach(lines::add);
  }

  private static TextTable.Align[] all(TextTable.Align[] rest) {
    TextTable.Align[] all = new TextTable.Align[rest.length + 1];
    all[0] = TextTable.Align.LEFT;
    System.arraycopy(rest, 0, all, 1, rest.length);
    return all;
  }

  private boolean isLong(Block.Grid grid) {
    int last = grid.columns().size() - 1;
    return grid.rows().stream()
        .filter(row -> row.cells().size() > last)
        .anyMatch(row -> leaf.text(row.cells().get(last)).length() > width);
  }

  private String[] cells(List<Phrase> phrases) {
    return phrases.stream().map(phrase -> Visible.of(leaf.text(phrase))).toArray(String[]::new);
  }
}
