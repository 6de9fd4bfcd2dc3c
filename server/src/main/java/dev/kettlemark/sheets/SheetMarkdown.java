package dev.kettlemark.sheets;

import dev.kettlemark.sheets.Block.Column;
import dev.kettlemark.sheets.Block.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A sheet as Markdown, one sentence on each line. */
public final class SheetMarkdown {

  private final SheetContent sheet;
  private final StringBuilder out = new StringBuilder();

  private SheetMarkdown(SheetContent sheet) {
    this.sheet = sheet;
  }

  public static String of(SheetContent sheet) {
    return new SheetMarkdown(sheet).text();
  }

  /** Blocks as they stand on a sheet, for another page. */
  static String blocks(SheetContent page, List<Block> blocks) {
    SheetMarkdown markdown = new SheetMarkdown(page);
    blocks.forEach(markdown::block);
    return markdown.out.toString();
  }

  /** A phrase that no reader of Markdown takes for markup. */
  static String line(SheetContent page, Phrase phrase) {
    return new SheetMarkdown(page).shown(phrase);
  }

  private String text() {
    out.append("# ").append(plain(sheet.head().title())).append("\n\n");
    out.append(TitleBlock.marks(sheet).stream().map(this::shown).collect(Collectors.joining(" · ")))
        .append("\n");
    out.append(shown(TitleBlock.reader(sheet))).append("\n");
    TitleBlock.stamp(sheet).forEach(stamp -> out.append(shown(stamp)).append("\n"));
    for (Part part : sheet.parts()) {
      out.append("\n## ")
          .append(shown(Phrase.words("part." + part.kind().word())))
          .append("\n");
      part.blocks().forEach(this::block);
    }
    return out.toString();
  }

  private void block(Block block) {
    if (block instanceof Block.Drawing) {
      return;
    }
    out.append("\n");
    if (block instanceof Block.Lines lines) {
      lines.lines().forEach(line -> out.append(shown(line)).append("\n"));
    } else if (block instanceof Block.Points points) {
      points.points().forEach(point -> out.append("- ").append(shown(point)).append("\n"));
    } else if (block instanceof Block.Cautions cautions) {
      cautions
          .cautions()
          .forEach(one -> out.append("- ").append(shown(one.text())).append("\n"));
    } else if (block instanceof Block.Heading heading) {
      out.append("### ").append(shown(heading.phrase())).append("\n");
    } else if (block instanceof Block.Steps steps) {
      steps(steps);
    } else if (block instanceof Block.Terms terms) {
      terms
          .terms()
          .forEach(term -> out.append("- ")
              .append(shown(term.word()))
              .append(": ")
              .append(shown(term.told()))
              .append("\n"));
    } else if (block instanceof Block.Grid grid) {
      table(grid);
    }
  }

  private void steps(Block.Steps steps) {
    for (int i = 0; i < steps.steps().size(); i++) {
      Block.Step step = steps.steps().get(i);
      out.append("- **")
          .append(steps.stage())
          .append('.')
          .append(i + 1)
          .append("** ")
          .append(shown(step.text()))
          .append("\n");
      step.remarks().forEach(remark -> out.append("  ").append(shown(remark)).append("\n"));
    }
  }

  private void table(Block.Grid grid) {
    out.append(shown(grid.caption())).append("\n\n");
    out.append(line(grid.columns().stream().map(c -> shown(c.heading())).toList()));
    out.append(line(grid.columns().stream()
        .map(column -> column.holds() == Column.Holds.FIGURE ? "---:" : "---")
        .toList()));
    for (Row row : grid.rows()) {
      List<String> cells = new ArrayList<>();
      row.cells().forEach(cell -> {
        String text = shown(cell);
        cells.add(
            row.rank() == Row.Rank.PLAIN || row.rank() == Row.Rank.ACROSS || text.isEmpty()
                ? text
                : "**" + text + "**");
      });
      while (cells.size() < grid.columns().size()) {
        cells.add("");
      }
      out.append(line(cells));
    }
  }

  private static String line(List<String> cells) {
    return "| " + String.join(" | ", cells) + " |\n";
  }

  private String shown(Phrase phrase) {
    return sheet.speech().runs(phrase).stream()
        .map(run ->
            run.kind() == Run.Kind.MARKED ? "*" + plain(run.text()) + "*" : plain(run.text()))
        .collect(Collectors.joining());
  }

  /** Text that no reader of Markdown takes for markup. */
  private static String plain(String text) {
    return text.replaceAll("([\\\\`*_\\[\\]<>|#])", "\\\\$1").replace('\n', ' ');
  }
}
