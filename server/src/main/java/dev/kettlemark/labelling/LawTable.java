package dev.kettlemark.labelling;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A table of the law, shipped as text inside the program.
 *
 * <p>Cells stand between bars, the first line names the columns, and {@code #} starts a comment line.
 */
final class LawTable {

  private static final String FOLDER = "/dev/kettlemark/labelling/";

  private LawTable() {}

  /** One row, its cells by the names of their columns. */
  record Row(Map<String, String> cells) {

    Row {
      cells = Map.copyOf(cells);
    }

    String text(String column) {
      return Optional.ofNullable(cells.get(column))
          .orElseThrow(() -> new IllegalStateException("the table has no column " + column));
    }

    /** The parts of a cell between its commas. */
    List<String> list(String column) {
      return Stream.of(text(column).split(","))
          .map(String::strip)
          .filter(part -> !part.isEmpty())
          .toList();
    }

    Optional<Market> market() {
      return Market.ofWord(text("market"));
    }

    /** Whether the row holds in a market; {@code *} holds in all. */
    boolean holdsIn(Market market) {
      return text("market").equals("*") || market().filter(market::equals).isPresent();
    }

    Law law() {
      String since = text("since");
      return new Law(
          text("law"),
          since.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(since)),
          text("read"));
    }
  }

  static List<Row> read(String name) {
    List<String> lines = resource(name)
        .lines()
        .filter(line -> !line.isBlank() && !line.startsWith("#"))
        .toList();
    List<String> columns = cells(lines.get(0));
    List<Row> rows = new ArrayList<>();
    for (String line : lines.subList(1, lines.size())) {
      List<String> cells = cells(line);
      if (cells.size() != columns.size()) {
        throw new IllegalStateException(name + " has a row of another width: " + line);
      }
      Map<String, String> row = new HashMap<>();
      for (int i = 0; i < columns.size(); i++) {
        row.put(columns.get(i), cells.get(i));
      }
      rows.add(new Row(row));
    }
    return List.copyOf(rows);
  }

  private static List<String> cells(String line) {
    return Stream.of(line.split("\\|", -1)).map(String::strip).toList();
  }

  private static String resource(String name) {
    try (InputStream stream = LawTable.class.getResourceAsStream(FOLDER + name)) {
      if (stream == null) {
        throw new IllegalStateException("the program lacks its table " + name);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
