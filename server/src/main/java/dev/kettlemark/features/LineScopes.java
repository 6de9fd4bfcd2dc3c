package dev.kettlemark.features;

import dev.kettlemark.features.Columns.PlacedRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Lays out lines together with those they align with: the facts of a section, or a stage. */
final class LineScopes {

  private static final int GAP_BEFORE_COMMENT = 2;

  private LineScopes() {}

  /**
   * A row with all its columns.
   *
   * @param comment the column of a comment behind it
   */
  record Layout(PlacedRow row, int comment) {}

  /** The layout of every line that has words and could be read, by line number. */
  static Map<Integer, Layout> of(List<WrittenLine> lines) {
    Map<Integer, Layout> layouts = new TreeMap<>();
    List<Row> scope = new ArrayList<>();
    boolean inStage = false;
    for (WrittenLine line : lines) {
      if (line.isHeading()) {
        lay(scope, layouts);
        scope.clear();
        inStage = line.opensStage();
      }
      if (!line.tokens().isEmpty() && !line.broken()) {
        scope.add(RowCutter.cut(line, inStage));
      }
    }
    lay(scope, layouts);
    return layouts;
  }

  private static void lay(List<Row> scope, Map<Integer, Layout> layouts) {
    List<PlacedRow> headings = new ArrayList<>();
    List<PlacedRow> amounts = new ArrayList<>();
    List<PlacedRow> facts = new ArrayList<>();
    for (PlacedRow placed : Columns.of(scope)) {
      switch (placed.row().table()) {
        case HEADING -> headings.add(placed);
        case AMOUNT -> amounts.add(placed);
        default -> facts.add(placed);
      }
    }
    layComments(headings, layouts);
    layComments(amounts, layouts);
    layComments(facts, layouts);
  }

  /** Comments behind lines of one kind stand below each other. */
  private static void layComments(List<PlacedRow> rows, Map<Integer, Layout> layouts) {
    int column = rows.stream()
        .filter(placed -> placed.row().line().comment().isPresent())
        .mapToInt(placed -> placed.end() + GAP_BEFORE_COMMENT)
        .max()
        .orElse(0);
    rows.forEach(placed -> layouts.put(placed.row().line().number(), new Layout(placed, column)));
  }
}
