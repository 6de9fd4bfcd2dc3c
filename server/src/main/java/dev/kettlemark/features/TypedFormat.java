package dev.kettlemark.features;

import dev.kettlemark.syntax.ParsedText;
import dev.kettlemark.syntax.ParsedText.PlacedSection;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the end of a line brings into its columns: the lines of the same stage or section above the cursor.
 *
 * <p>The line of the cursor keeps its words and gets its indentation; blank lines stay as they are, since
 * another one may be about to be written.
 */
public final class TypedFormat {

  private TypedFormat() {}

  /** The edits after a line end was typed, with the cursor on the new line. */
  public static List<TextEdit> atNewLine(ParsedText text, int offset) {
    Source source = text.source();
    int here = source.lineAt(offset);
    if (here == 0 || text.isHeadingsOnly()) {
      return List.of();
    }
    PlacedSection placed = text.sectionAt(source.line(here - 1).start());
    List<WrittenLine> lines = WrittenLine.of(text, placed);
    int above = here - 1 - lines.get(0).number();
    int first = above;
    while (first > 0 && !lines.get(first).isHeading() && !lines.get(first).isBlank()) {
      first--;
    }
    int start = lines.get(first).number();
    List<TextEdit> edits = new ArrayList<>();
    for (TextEdit edit : Formatter.editsInLines(text, placed)) {
      int line = source.lineAt(edit.span().start());
      if (start <= line && line < here) {
        edits.add(edit);
      }
    }
    if (above + 1 < lines.size()) {
      indentation(lines.get(above + 1), lines.get(above)).ifPresent(edits::add);
    }
    return edits;
  }

  /** A line below a heading or a line of a section starts where all of them do. */
  private static Optional<TextEdit> indentation(WrittenLine line, WrittenLine above) {
    boolean isEmpty = line.isBlank() && line.span().isEmpty();
    boolean isInSection = above.section().isPresent() && !above.tokens().isEmpty();
    return isEmpty && isInSection ? Optional.of(new TextEdit(line.span(), "  ")) : Optional.empty();
  }
}
