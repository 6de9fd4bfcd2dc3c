package dev.kettlemark.features;

import static dev.kettlemark.features.TextTable.Align.LEFT;
import static dev.kettlemark.features.TextTable.Align.RIGHT;

import dev.kettlemark.features.FormulaTable.Row;
import dev.kettlemark.features.FormulaTable.StageRows;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.text.Cells;
import java.util.ArrayList;
import java.util.List;

/** A {@link FormulaTable} as plain text for a terminal or a printer. */
public final class FormulaTableText {

  /** Below this many cells a broken line would be harder to read than a long one. */
  private static final int LEAST_ROOM = 30;

  private FormulaTableText() {}

  /**
   * The table as lines.
   *
   * @param width in cells; 80 holds every usual formula
   */
  public static List<String> lines(FormulaTable table, int width) {
    TextTable text = new TextTable(2, LEFT, RIGHT, RIGHT, RIGHT);
    text.plain(table.name() + table.title().map(title -> " \"" + title + "\"").orElse(""));
    text.paragraph(FormulaTableWords.circumstances(table), 0, width);
    text.plain("");
    text.row("", "written", "of charge", "weight");
    for (StageRows stage : table.stages()) {
      addStage(text, stage, width);
    }
    text.row(
        "all that is weighed in",
        "",
        Display.percent(table.totals().share()),
        Display.mass(table.totals().charge()));
    List<String> lines = new ArrayList<>(text.lines(width));
    lines.add("");
    lines.addAll(totals(table, width));
    return lines;
  }

  private static void addStage(TextTable text, StageRows stage, int width) {
    text.plain(FormulaTableWords.heading(stage));
    for (Row row : stage.rows()) {
      text.row(
          FormulaTableWords.name(row),
          FormulaTableWords.written(row),
          FormulaTableWords.share(row),
          FormulaTableWords.mass(row.mass()));
    }
    text.paragraph(FormulaTableWords.leaves(stage), 2, width);
    text.plain("");
  }

  private static List<String> totals(FormulaTable table, int width) {
    List<FormulaTableWords.Total> totals = FormulaTableWords.totals(table.totals());
    int titles = totals.stream().mapToInt(total -> Cells.of(total.what())).max().orElse(0);
    int room = Math.max(LEAST_ROOM, width - titles - 4);
    TextTable text = new TextTable(2, LEFT, LEFT);
    for (FormulaTableWords.Total total : totals) {
      String what = total.what();
      for (String line : Cells.wrapped(total.value(), room)) {
        text.row(what, line);
        what = "";
      }
    }
    return text.lines(width);
  }
}
