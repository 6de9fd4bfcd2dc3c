package dev.kettlemark.checks;

import dev.kettlemark.Pinned;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The mistakes of the trade, and which rule finds each. */
record Catalogue(List<Row> rows) {

  static final String FILE = "checks/catalogue.txt";

  private static final String ARROW = " -> ";
  private static final String NOT_CHECKED = "not checked: ";

  /**
   * One mistake.
   *
   * @param group the heading above it
   * @param mistake in the words of a practitioner
   * @param rules the ids of the rules that find it
   * @param whyNot why none does; empty where one does
   */
  record Row(String group, String mistake, List<String> rules, String whyNot) {}

  static Catalogue read() {
    return of(Pinned.resource(FILE).text());
  }

  static Catalogue of(String text) {
    List<Row> rows = new ArrayList<>();
    String group = "";
    for (String line : text.lines().toList()) {
      if (line.startsWith("## ")) {
        group = line.substring(3).strip();
      } else if (!line.isBlank() && !line.startsWith("#")) {
        rows.add(row(group, line));
      }
    }
    return new Catalogue(rows);
  }

  private static Row row(String group, String line) {
    int arrow = line.lastIndexOf(ARROW);
    if (arrow < 0) {
      throw new IllegalArgumentException("a row of the catalogue needs `->`: " + line);
    }
    String mistake = line.substring(0, arrow).strip();
    String behind = line.substring(arrow + ARROW.length()).strip();
    return behind.startsWith(NOT_CHECKED)
        ? new Row(
            group, mistake, List.of(), behind.substring(NOT_CHECKED.length()).strip())
        : new Row(group, mistake, Arrays.asList(behind.split(", *")), "");
  }

  List<String> groups() {
    return rows.stream().map(Row::group).distinct().toList();
  }

  List<Row> of(RuleInfo rule) {
    return rows.stream().filter(row -> row.rules().contains(rule.id())).toList();
  }
}
