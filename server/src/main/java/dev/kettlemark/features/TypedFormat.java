package dev.kettlemark.features;

import dev.kettlemark.syntax.ParsedText;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;
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
    List<WrittenLine> lines = WrittenLine.of(text);
    int first = here - 1;
    while (first > 0 && !lines.get(first).isHeading() && !lines.get(first).isBlank()) {
      first--;
    }
    List<TextEdit> edits = new ArrayList<>();
    Span above = new Span(source.line(first).start(), source.line(here - 1).end());
    for (TextEdit edit : Formatter.edits(text, above)) {
      if (isWithinLine(source, edit)) {
        edits.add(edit);
      }
    }
    indentation(lines.get(here), lines.get(here - 1)).ifPresent(edits::add);
    return edits;
  }

  /** Neither takes a line away nor adds one. */
  private static boolean isWithinLine(Source source, TextEdit edit) {
    Span line = source.line(source.lineAt(edit.span().start()));
    return line.contains(edit.span())
        && edit.replacement().indexOf('\n') < 0
        && edit.replacement().indexOf('\r') < 0;
  }

  /** A line below a heading or a line of a section starts where all of them do. */
  private static Optional<TextEdit> indentation(WrittenLine line, WrittenLine above) {
    boolean isEmpty = line.isBlank() && line.span().isEmpty();
    boolean isInSection = above.section().isPresent() && !above.tokens().isEmpty();
    return isEmpty && isInSection ? Optional.of(new TextEdit(line.span(), "  ")) : Optional.empty();
  }
}
