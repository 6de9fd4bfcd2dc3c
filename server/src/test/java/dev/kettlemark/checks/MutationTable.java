package dev.kettlemark.checks;

import dev.kettlemark.Pinned;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The mutations of the sample library.
 *
 * @param rows each with the rule that tells it
 * @param without the rules for which there is none, each with the reason
 */
record MutationTable(List<Mutation> rows, Map<String, String> without) {

  private static final String FILE = "checks/mutations.txt";
  private static final String CONTINUED = "&";
  private static final String WITHOUT = "Without a mutation";

  static MutationTable read() {
    return of(Pinned.resource(FILE).text());
  }

  static MutationTable of(String text) {
    List<Mutation> rows = new ArrayList<>();
    Map<String, String> without = new LinkedHashMap<>();
    String group = "";
    for (String line : text.lines().filter(one -> !isRemark(one)).toList()) {
      String[] cells =
          Arrays.stream(line.split("\\|", -1)).map(String::strip).toArray(String[]::new);
      if (line.startsWith("# ")) {
        group = line.substring(2).strip();
      } else if (group.equals(WITHOUT)) {
        without.put(cells[0], cells[1]);
      } else if (line.startsWith(CONTINUED)) {
        Mutation last = rows.remove(rows.size() - 1);
        List<Mutation.Edit> edits = new ArrayList<>(last.edits());
        edits.add(edit(cells[0].substring(1).strip(), cells));
        rows.add(new Mutation(group, edits, last.rule(), last.also()));
      } else {
        rows.add(new Mutation(group, List.of(edit(cells[0], cells)), cells[3], also(cells)));
      }
    }
    return new MutationTable(List.copyOf(rows), without);
  }

  private static boolean isRemark(String line) {
    return line.isBlank() || line.startsWith("//");
  }

  private static Mutation.Edit edit(String place, String[] cells) {
    int slash = place.indexOf('/');
    return new Mutation.Edit(
        slash < 0 ? place : place.substring(0, slash),
        slash < 0 ? "" : place.substring(slash + 1),
        cells[1],
        cells[2]);
  }

  private static List<String> also(String[] cells) {
    return cells.length > 4 && !cells[4].isEmpty()
        ? Arrays.stream(cells[4].split(", *")).sorted().toList()
        : List.of();
  }
}
