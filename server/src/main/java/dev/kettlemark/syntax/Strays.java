package dev.kettlemark.syntax;

import dev.kettlemark.text.Span;
import java.util.List;

/** Tells of characters that the language does not know; neighbours are told of together. */
final class Strays {

  /** More than this many neighbours are no slip of the finger but another language. */
  private static final int MOST_SHOWN = 8;

  private final List<SyntaxProblem> problems;
  private final StringBuilder run = new StringBuilder();
  private int count;
  private Span place = Span.at(0);

  Strays(List<SyntaxProblem> problems) {
    this.problems = problems;
  }

  void add(Span span, String character) {
    boolean continues = count > 0 && span.start() == place.end() && isLast();
    if (continues) {
      problems.remove(problems.size() - 1);
      place = place.to(span);
    } else {
      run.setLength(0);
      count = 0;
      place = span;
    }
    count++;
    if (count <= MOST_SHOWN) {
      run.append(character);
    }
    problems.add(new SyntaxProblem(place, message()));
  }

  private boolean isLast() {
    return !problems.isEmpty() && problems.get(problems.size() - 1).span().equals(place);
  }

  private String message() {
    if (count == 1 && "-−–—".indexOf(run.charAt(0)) >= 0) {
      return "a dash joins two figures, and a hyphen the parts of a name, which starts with a letter";
    }
    if (count == 1) {
      return "the character " + shown(run.codePointAt(0)) + " has no meaning here";
    }
    if (count > MOST_SHOWN) {
      return "these " + count + " characters have no meaning here";
    }
    boolean visible = run.codePoints().allMatch(Strays::isVisible);
    return "the characters "
        + (visible ? "`" + run + "`" : "from " + shown(run.codePointAt(0)) + " on")
        + " have no meaning here";
  }

  private static String shown(int codePoint) {
    return isVisible(codePoint)
        ? "`" + Character.toString(codePoint) + "`"
        : String.format("U+%04X", codePoint);
  }

  private static boolean isVisible(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.NON_SPACING_MARK,
          Character.ENCLOSING_MARK -> false;
      default -> true;
    };
  }
}
