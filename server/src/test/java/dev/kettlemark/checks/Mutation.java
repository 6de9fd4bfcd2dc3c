package dev.kettlemark.checks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A right library with one thing made wrong.
 *
 * @param group the heading above it in the table
 * @param edits what is written otherwise, mostly one place
 * @param rule the only rule that may tell an error or a warning of it
 * @param also the rules that tell something milder besides
 */
record Mutation(String group, List<Edit> edits, String rule, List<String> also) {

  static final String DROPPED = "-";
  static final String NOTHING = "(nothing)";
  static final String SWAPPED = "(swapped with the line below)";
  static final String MOVED = "(moved below ";
  static final String ADDED = "+ ";

  private static final List<String> HEADINGS =
      List.of("house", "ingredient", "formula", "variant", "product", "trial", "sheet", "stage");

  Mutation {
    edits = List.copyOf(edits);
    also = List.copyOf(also);
  }

  /** The file that all edits are made in. */
  String file() {
    return edits.get(0).file();
  }

  /** The text of the file, written otherwise. */
  String applied(String text) {
    List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n", -1)));
    edits.forEach(edit -> edit.apply(lines));
    return String.join("\n", lines);
  }

  @Override
  public String toString() {
    return rule + " in " + edits.get(0);
  }

  /**
   * One place written otherwise.
   *
   * @param file of the sample library, without its ending
   * @param part the name behind the heading below which it stands; empty where the whole file is meant
   * @param stands some words of one line, which must be found once
   * @param instead what takes the place of the words, or becomes of the line
   */
  record Edit(String file, String part, String stands, String instead) {

    private void apply(List<String> lines) {
      int at = line(lines, part, stands);
      String line = lines.get(at);
      if (instead.equals(DROPPED)) {
        lines.remove(at);
      } else if (instead.equals(SWAPPED)) {
        lines.set(at, lines.get(at + 1));
        lines.set(at + 1, line);
      } else if (instead.startsWith(ADDED)) {
        String added = instead.substring(ADDED.length());
        lines.add(at + 1, (isHeading(added) ? "" : indent(line)) + added);
      } else if (instead.startsWith(MOVED)) {
        int colon = instead.indexOf(": ");
        String below = instead.substring(MOVED.length(), colon);
        lines.remove(at);
        int target = line(lines, below, instead.substring(colon + 2, instead.length() - 1));
        lines.add(target + 1, line);
      } else {
        String words = " " + plain(line) + " ";
        String other = instead.equals(NOTHING) ? " " : " " + instead + " ";
        lines.set(at, indent(line) + words.replace(" " + stands + " ", other).strip());
      }
    }

    /** The only line of a part that holds some words, however many spaces are between them. */
    private int line(List<String> lines, String below, String words) {
      int from = below.isEmpty() ? 0 : heading(lines, below);
      int to = below.isEmpty()
          ? lines.size()
          : IntStream.range(from + 1, lines.size())
              .filter(i -> isHeading(lines.get(i)))
              .findFirst()
              .orElse(lines.size());
      int[] found = IntStream.range(from, to)
          .filter(i -> (" " + plain(lines.get(i)) + " ").contains(" " + words + " "))
          .toArray();
      if (found.length != 1) {
        throw new IllegalArgumentException(
            this + ": `" + words + "` stands on " + found.length + " lines");
      }
      return found[0];
    }

    private int heading(List<String> lines, String name) {
      return IntStream.range(0, lines.size())
          .filter(i -> isHeading(lines.get(i)))
          .filter(i -> (plain(lines.get(i)) + " ").contains(" " + name + " "))
          .findFirst()
          .orElseThrow(() -> new IllegalArgumentException(this + ": no part `" + name + "`"));
    }

    private static boolean isHeading(String line) {
      return HEADINGS.contains(line.split(" ", 2)[0]);
    }

    private static String plain(String line) {
      return line.strip().replaceAll("\\s+", " ");
    }

    private static String indent(String line) {
      return isHeading(line)
          ? "  "
          : line.substring(0, line.length() - line.stripLeading().length());
    }

    @Override
    public String toString() {
      return file + (part.isEmpty() ? "" : "/" + part) + ": " + stands + " => " + instead;
    }
  }
}
