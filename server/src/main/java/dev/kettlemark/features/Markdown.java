package dev.kettlemark.features;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.regex.Pattern;

/** A text in CommonMark, grown paragraph by paragraph. */
final class Markdown {

  private static final Pattern SPECIAL = Pattern.compile("[\\\\`*_\\[\\]<>|#~]");

  private final List<String> blocks = new ArrayList<>();

  /** Adds a paragraph unless it is empty. */
  Markdown paragraph(String text) {
    if (!text.isBlank()) {
      blocks.add(text);
    }
    return this;
  }

  /** Adds a table with left-aligned first column and right-aligned figures; nothing where it has no rows. */
  Markdown table(List<String> head, List<List<String>> rows) {
    if (rows.isEmpty()) {
      return this;
    }
    List<String> lines = new ArrayList<>();
    lines.add(row(head));
    lines.add("| :-- " + "| --: ".repeat(head.size() - 1) + "|");
    rows.forEach(row -> lines.add(row(row)));
    blocks.add(String.join("\n", lines));
    return this;
  }

  String text() {
    return String.join("\n\n", blocks);
  }

  /** The user's own words, with what CommonMark would take for marks made plain. */
  static String plain(String words) {
    return SPECIAL.matcher(words).replaceAll("\\\\$0");
  }

  static String code(String name) {
    return "`" + name + "`";
  }

  /** {@code a, b and 3 more}. */
  static String some(Collection<String> names, int most) {
    List<String> shown = names.stream().limit(most).map(Markdown::code).toList();
    int rest = names.size() - shown.size();
    return String.join(", ", shown) + (rest > 0 ? " and " + rest + " more" : "");
  }

  private static String row(List<String> cells) {
    return "| " + String.join(" | ", cells) + " |";
  }
}
