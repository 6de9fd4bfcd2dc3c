package dev.kettlemark.syntax;

import dev.kettlemark.text.LineEnds;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the text of a section is read as, with offsets counted from its start.
 *
 * <p>A line is read by itself, whatever stands above and below. All three lists are in order of place.
 *
 * @param text that was read
 * @param lines one for each line of the text
 * @param lexemes tokens in order
 * @param problems what could not be read
 */
record SectionTree(
    String text, List<Line> lines, List<Lexeme> lexemes, List<SyntaxProblem> problems) {

  SectionTree {
    lines = List.copyOf(lines);
    lexemes = List.copyOf(lexemes);
    problems = List.copyOf(problems);
  }

  /** The word it opens with; empty for text before the first section. */
  Optional<SectionWord> keyword() {
    if (lines.isEmpty() || !(lines.get(0) instanceof Line.SectionLine first)) {
      return Optional.empty();
    }
    return Optional.of(first.keyword()).filter(SectionWord::opensSection);
  }

  /** How many characters both texts start with, as far as they are whole lines. */
  int sameStart(String other) {
    int most = Math.min(text.length(), other.length());
    int same = 0;
    while (same < most && text.charAt(same) == other.charAt(same)) {
      same++;
    }
    while (!LineEnds.isLineStart(text, same) || !LineEnds.isLineStart(other, same)) {
      same--;
    }
    return same;
  }

  /**
   * How many characters both texts end with, as far as they are whole lines.
   *
   * @param start so many characters at the start of both are counted already
   */
  int sameEnd(String other, int start) {
    int most = Math.min(text.length(), other.length()) - start;
    int last = text.length();
    int otherLast = other.length();
    int same = 0;
    while (same < most && text.charAt(last - same - 1) == other.charAt(otherLast - same - 1)) {
      same++;
    }
    while (same > 0
        && !(LineEnds.isLineStart(text, last - same)
            && LineEnds.isLineStart(other, otherLast - same))) {
      same--;
    }
    return same;
  }

  /**
   * The tree with other lines in the place of some.
   *
   * @param changed what stands there now
   * @param start where it stands; a line starts there
   * @param rest so many characters at the end stay; a line starts with them, if there are any
   */
  SectionTree with(SectionTree changed, int start, int rest) {
    int end = text.length() - rest;
    // Behind the last line end of what stands there now, the first line that stays goes on.
    List<Line> between =
        rest == 0 ? changed.lines : changed.lines.subList(0, changed.lines.size() - 1);
    Change change =
        new Change(start, rest == 0 ? Integer.MAX_VALUE : end, start + changed.text.length() - end);
    return new SectionTree(
        text.substring(0, start) + changed.text + text.substring(end),
        change.in(lines, between),
        change.in(lexemes, changed.lexemes),
        change.in(problems, changed.problems));
  }

  /**
   * Where other lines stand.
   *
   * @param start of them, before and now
   * @param end of those that stood there before
   * @param growth by which all behind them moves on
   */
  private record Change(int start, int end, int growth) {

    <T extends Placed<T>> List<T> in(List<T> before, List<T> between) {
      List<T> now = new ArrayList<>(before.size() + between.size());
      for (T placed : before) {
        if (placed.span().start() < start) {
          now.add(placed);
        }
      }
      for (T placed : between) {
        now.add(placed.shiftedBy(start));
      }
      for (T placed : before) {
        if (placed.span().start() >= end) {
          now.add(growth == 0 ? placed : placed.shiftedBy(growth));
        }
      }
      return now;
    }
  }
}
