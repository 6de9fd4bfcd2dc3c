package dev.kettlemark.syntax;

import dev.kettlemark.text.LineEnds;
import java.util.Set;

/**
 * Finds where sections start, by looking at the first word of each line only.
 *
 * <p>No token crosses a line end, so the line's first word decides alone, and scanning may start at
 * any line start. The rule agrees with the lexer: a section word followed by a further character of a
 * name, as in {@code formula-card}, is a name.
 */
final class SectionBoundaries {

  private static final Set<String> OPENERS =
      Set.of("house", "ingredient", "formula", "variant", "product", "trial", "sheet");

  private static final int LONGEST_OPENER = 10;

  private SectionBoundaries() {}

  /** Start of the first line at or behind the offset that opens a section, or -1. */
  static int next(String text, int lineStart) {
    int line = lineStart;
    while (line >= 0 && line < text.length()) {
      if (opensSection(text, line)) {
        return line;
      }
      line = LineEnds.next(text, line);
    }
    return -1;
  }

  private static boolean opensSection(String text, int lineStart) {
    int start = lineStart;
    while (start < text.length() && isGap(text.charAt(start))) {
      start++;
    }
    int end = start;
    while (end < text.length() && end - start <= LONGEST_OPENER && isLower(text.charAt(end))) {
      end++;
    }
    return OPENERS.contains(text.substring(start, end)) && !continuesName(text, end);
  }

  private static boolean continuesName(String text, int offset) {
    if (offset >= text.length()) {
      return false;
    }
    int next = text.codePointAt(offset);
    if (isNameCharacter(next)) {
      return true;
    }
    boolean joins = next == '-' || next == '\'' || next == '’';
    return joins && offset + 1 < text.length() && isNameCharacter(text.codePointAt(offset + 1));
  }

  private static boolean isLower(char c) {
    return c >= 'a' && c <= 'z';
  }

  private static boolean isNameCharacter(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.UPPERCASE_LETTER,
          Character.LOWERCASE_LETTER,
          Character.TITLECASE_LETTER,
          Character.MODIFIER_LETTER,
          Character.OTHER_LETTER,
          Character.NON_SPACING_MARK,
          Character.COMBINING_SPACING_MARK,
          Character.ENCLOSING_MARK,
          Character.DECIMAL_DIGIT_NUMBER -> true;
      default -> codePoint == '_';
    };
  }

  private static boolean isGap(char c) {
    return c == '\t'
        || c == '\f'
        || c == '\u000B'
        || c == '\u200B'
        || c == '\uFEFF'
        || Character.getType(c) == Character.SPACE_SEPARATOR;
  }
}
