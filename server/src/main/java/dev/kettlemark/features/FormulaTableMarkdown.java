package dev.kettlemark.features;

import dev.kettlemark.features.FormulaTable.Row;
import dev.kettlemark.features.FormulaTable.StageRows;
import dev.kettlemark.quantity.Display;

/** A {@link FormulaTable} as Markdown for an editor's preview. */
final class FormulaTableMarkdown {

  private final FormulaTable table;
  private final StringBuilder text = new StringBuilder();

  FormulaTableMarkdown(FormulaTable table) {
    this.table = table;
  }

  String text() {
    line("# " + escaped(table.title().orElse(table.name())));
    line("");
    line("`" + table.name() + "`: " + escaped(FormulaTableWords.circumstances(table)));
    table.stages().forEach(this::addStage);
    line("");
    line("## In all");
    line("");
    line("| | |");
    line("|:--|--:|");
    for (FormulaTableWords.Total total : FormulaTableWords.totals(table.totals())) {
      line("| " + total.what() + " | " + escaped(total.value()) + " |");
    }
    return text.toString();
  }

  private void addStage(StageRows stage) {
    line("");
    line("## " + escaped(stage.title().orElse(stage.name())));
    line("");
    line("| `" + stage.name() + "` | written | of charge | weight |");
    line("|:--|--:|--:|--:|");
    for (Row row : stage.rows()) {
      line("| "
          + escaped(FormulaTableWords.name(row))
          + " | "
          + escaped(FormulaTableWords.written(row))
          + " | "
          + FormulaTableWords.share(row)
          + " | "
          + FormulaTableWords.mass(row.mass())
          + " |");
    }
    line("| **weighed in** | | "
        + Display.percent(stage.share())
        + " | "
        + Display.mass(stage.weighed())
        + " |");
    line("");
    line(escaped(FormulaTableWords.leaves(stage)) + ".");
  }

  private void line(String line) {
    text.append(line).append('\n');
  }

  /** What Markdown would read as a mark, a cell border or a tag stands as itself. */
  private static String escaped(String plain) {
    return plain.replaceAll("([\\\\`*_\\[\\]<>|#])", "\\\\$1");
  }
}
