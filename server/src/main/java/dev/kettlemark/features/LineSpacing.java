package dev.kettlemark.features;

import java.util.BitSet;
import java.util.List;

/** Which blank lines a text keeps, where one is missing, and how far comments are indented. */
final class LineSpacing {

  private final List<WrittenLine> lines;

  /** Comments at the margin with nothing but such comments up to a heading. */
  private final BitSet headingComments = new BitSet();

  /** Comments with nothing but comments up to a line of a section's body. */
  private final BitSet bodyComments = new BitSet();

  private final int firstWords;

  LineSpacing(List<WrittenLine> lines) {
    this.lines = lines;
    this.firstWords =
        (int) lines.stream().takeWhile(line -> line.tokens().isEmpty()).count();
    boolean aboveHeading = false;
    boolean aboveBody = false;
    for (int i = lines.size() - 1; i >= 0; i--) {
      WrittenLine line = lines.get(i);
      if (line.isComment()) {
        aboveHeading &= isAtMargin(line);
        headingComments.set(i, aboveHeading);
        bodyComments.set(i, aboveBody);
      } else {
        aboveHeading = line.isHeading();
        aboveBody = !line.isHeading() && !line.isBlank();
      }
    }
  }

  /** Whether a blank line goes: at the start, at the end, and behind another blank line. */
  boolean isSurplus(int line) {
    return lines.get(line).isBlank()
        && (line == 0
            || lines.get(line - 1).isBlank()
            || lines.subList(line, lines.size()).stream().allMatch(WrittenLine::isBlank));
  }

  /** Whether a heading, or the comment that belongs to it, stands right below something else. */
  boolean lacksBlankBefore(int line) {
    boolean opensParagraph = lines.get(line).isHeading() || headingComments.get(line);
    return line > 0
        && opensParagraph
        && !lines.get(line - 1).isBlank()
        && !headingComments.get(line - 1);
  }

  /** Whether the line is a comment that belongs to the heading below it. */
  boolean isHeadingComment(int line) {
    return headingComments.get(line);
  }

  /**
   * The column of a comment that has its line to itself.
   *
   * <p>One at the margin stays there unless a line of the body follows; one above all else goes there.
   */
  int commentColumn(int line) {
    boolean margin = line < firstWords || isAtMargin(lines.get(line));
    return margin && !bodyComments.get(line) ? 0 : 2;
  }

  private static boolean isAtMargin(WrittenLine line) {
    return line.comment().filter(c -> c.span().start() == line.span().start()).isPresent();
  }
}
