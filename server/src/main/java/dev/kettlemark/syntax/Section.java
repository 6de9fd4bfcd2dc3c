package dev.kettlemark.syntax;

import java.util.List;
import java.util.Optional;

/**
 * The tree of one section, with offsets counted from the section's own start.
 *
 * <p>A section is the unit of lexing, parsing and of every later result. It does not know where in a
 * file it stands, so an edit above it leaves it, and all that was computed from it, as it is.
 *
 * @param text the section's own text, up to the start of the next section
 * @param keyword the word it opens with; empty for text before the first section
 * @param lines one for each line of the text
 * @param lexemes tokens in order
 * @param problems what could not be read
 */
public record Section(
    String text,
    Optional<SectionWord> keyword,
    List<Line> lines,
    List<Lexeme> lexemes,
    List<SyntaxProblem> problems) {

  public Section {
    lines = List.copyOf(lines);
    lexemes = List.copyOf(lexemes);
    problems = List.copyOf(problems);
  }

  /** Two sections are the same only if they are one object: results hang on it. */
  @Override
  public boolean equals(Object other) {
    return this == other;
  }

  @Override
  public int hashCode() {
    return System.identityHashCode(this);
  }
}
