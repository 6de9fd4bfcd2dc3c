package dev.kettlemark.features;

import java.util.BitSet;
import java.util.List;

/** Which blank lines a text keeps, where one is missing, and how far comments are indented. */
final class LineSpacing {

  private final List<WrittenLine> lines;

  /** The number of the first of the lines. */
  private final int first;

  /** Whether a heading may stand right below what stands above these. */
  private final boolean isApart;

  /** Whether the text has lines behind these. */
  private final boolean goesOn;

  /** Comments at the margin with nothing but such comments up to a heading. */
  private final BitSet headingComments = new BitSet();

  /** Comments with nothing but comments up to a line of a section's body. */
  private final BitSet bodyComments = new BitSet();

  private final int firstWords;

  /**
   * That of a section, which is known by its own lines but for what hangs on those around it.
   *
   * @param isApart whether nothing stands above, or what does {@link #endsApart()}
   * @param goesOn whether the heading of another section follows
   */
  LineSpacing(List<WrittenLine> lines, boolean isApart, boolean goesOn) {
    this.lines = lines;
    this.first = lines.get(0).number();
    this.isApart = isApart;
    this.goesOn = goesOn;
    this.firstWords =
        (int) lines.stream().takeWhile(line -> line.tokens().isEmpty()).count();
    boolean aboveHeading = goesOn;
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
  boolean isSurplus(int number) {
    int line = number - first;
    return lines.get(line).isBlank()
        && (number == 0
            || (line > 0 && lines.get(line - 1).isBlank())
            || (!goesOn
                && lines.subList(line, lines.size()).stream().allMatch(WrittenLine::isBlank)));
  }

  /** Whether a heading, or the comment that belongs to it, stands right below something else. */
  boolean lacksBlankBefore(int number) {
    int line = number - first;
    boolean opensParagraph = lines.get(line).isHeading() || headingComments.get(line);
    return opensParagraph && !(line == 0 ? isApart : isApart(line - 1));
  }

  /** Whether a heading may stand right below the last line. */
  boolean endsApart() {
    return isApart(lines.size() - 1);
  }

  private boolean isApart(int line) {
    return lines.get(line).isBlank() || headingComments.get(line);
  }

  /** Whether the line is a comment that belongs to the heading below it. */
  boolean isHeadingComment(int number) {
    return headingComments.get(number - first);
  }

  /**
   * The column of a comment that has its line to itself.
   *
   * <p>One at the margin stays there unless a line of the body follows; one above all else goes there.
   */
  int commentColumn(int number) {
    int line = number - first;
    boolean margin = line < firstWords || isAtMargin(lines.get(line));
    return margin && !bodyComments.get(line) ? 0 : 2;
  }

  private static boolean isAtMargin(WrittenLine line) {
    return line.comment().filter(c -> c.span().start() == line.span().start()).isPresent();
  }
}
