package dev.kettlemark.protocol;

import dev.kettlemark.text.PositionEncoding;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.List;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;

/** Converts between the project's offsets and the positions of one client. */
record Positions(PositionEncoding encoding) {

  /** The first encoding that the client offers and that we know; UTF-16 where it offers none. */
  static Positions negotiated(@org.jspecify.annotations.Nullable List<String> offered) {
    if (offered != null) {
      for (String word : offered) {
        for (PositionEncoding encoding : PositionEncoding.values()) {
          if (encoding.word().equals(word)) {
            return new Positions(encoding);
          }
        }
      }
    }
    return new Positions(PositionEncoding.UTF16);
  }

  int offset(Source source, Position position) {
    return source.offset(
        new dev.kettlemark.text.Position(position.getLine(), position.getCharacter()), encoding);
  }

  /** A range may come with its ends swapped or behind the text; the nearest sensible span is meant. */
  Span span(Source source, Range range) {
    int start = offset(source, range.getStart());
    int end = offset(source, range.getEnd());
    return new Span(Math.min(start, end), Math.max(start, end));
  }

  Position position(Source source, int offset) {
    dev.kettlemark.text.Position position = source.position(offset, encoding);
    return new Position(position.line(), position.column());
  }

  Range range(Source source, Span span) {
    return new Range(position(source, span.start()), position(source, span.end()));
  }

  /** The part of a span on its first line: clients draw long ranges badly. */
  Range firstLine(Source source, Span span) {
    int lineEnd = source.line(source.lineAt(span.start())).end();
    return range(
        source, new Span(span.start(), Math.max(span.start(), Math.min(span.end(), lineEnd))));
  }

  org.eclipse.lsp4j.TextEdit edit(Source source, TextEdit edit) {
    TextEdit least = edit.withoutWhatStays(source.text());
    return new org.eclipse.lsp4j.TextEdit(range(source, least.span()), least.replacement());
  }
}
