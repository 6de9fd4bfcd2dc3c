package dev.kettlemark.features;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Places the cells of rows that belong together, such as those of a stage. */
final class Columns {

  private Columns() {}

  /**
   * A row and the columns at which its cells start.
   *
   * @param starts one for each cell, empty ones too
   */
  record PlacedRow(Row row, List<Integer> starts) {

    PlacedRow {
      starts = List.copyOf(starts);
    }

    /** The column behind the last word. */
    int end() {
      int last = row.cells().size() - 1;
      while (last > 0 && row.cells().get(last).isEmpty()) {
        last--;
      }
      return starts.get(last) + row.cells().get(last).width();
    }
  }

  /** The rows with their columns, in any order. */
  static List<PlacedRow> of(List<Row> rows) {
    Map<Table, List<Row>> tables = new EnumMap<>(Table.class);
    rows.forEach(
        row -> tables.computeIfAbsent(row.table(), t -> new ArrayList<>()).add(row));
    List<PlacedRow> placed = new ArrayList<>(rows.size());
    tables.forEach((table, members) -> {
      if (table == Table.AMOUNT) {
        placed.addAll(AmountColumns.of(members).place(members));
      } else if (table.isElastic()) {
        placed.addAll(place(members));
      } else {
        members.forEach(row -> placed.addAll(place(List.of(row))));
      }
    });
    return placed;
  }

  /** Cells start at their stop, or two spaces behind the longest cell before them. */
  private static List<PlacedRow> place(List<Row> rows) {
    int most = rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
    List<Integer> columns = new ArrayList<>();
    for (int cell = 0; cell < most; cell++) {
      int column = rows.get(0).table().stop(cell);
      for (Row row : rows) {
        if (cell > 1 && row.cells().size() > cell) {
          column = Math.max(column, end(row, cell - 1, columns) + 2);
        }
      }
      columns.add(column);
    }
    return rows.stream().map(row -> new PlacedRow(row, starts(row, columns))).toList();
  }

  private static List<Integer> starts(Row row, List<Integer> columns) {
    List<Integer> starts = new ArrayList<>();
    for (int cell = 0; cell < row.cells().size(); cell++) {
      starts.add(start(row, cell, columns));
    }
    return starts;
  }

  private static int end(Row row, int cell, List<Integer> columns) {
    return start(row, cell, columns) + row.cells().get(cell).width();
  }

  /** A long first word pushes only what stands right behind it. */
  private static int start(Row row, int cell, List<Integer> columns) {
    return cell == 1
        ? Math.max(columns.get(1), columns.get(0) + row.cells().get(0).width() + 1)
        : columns.get(cell);
  }
}
