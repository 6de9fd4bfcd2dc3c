package dev.kettlemark.reading;

import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.Section;
import java.util.List;

/** Tells of lines that stand before the first section of a file. */
final class OrphanLines {

  private OrphanLines() {}

  /** Reports only the first: one missing section word is one mistake. */
  static void report(Section section, List<ReadingProblem> problems) {
    section.lines().stream()
        .filter(line -> !(line instanceof Line.EmptyLine) && !(line instanceof Line.UnreadableLine))
        .findFirst()
        .ifPresent(line -> problems.add(new ReadingProblem(
            line.span(),
            "this line belongs to no section; a section starts with a word such as"
                + " `formula NAME`")));
  }
}
