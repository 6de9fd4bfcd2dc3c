package dev.kettlemark.protocol;

import dev.kettlemark.syntax.ParsedText;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.function.Function;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;

/** A client's change as an edit of the text it applies to. */
final class ContentChange {

  private ContentChange() {}

  /** A change without a range replaces the whole text. */
  static Function<ParsedText, TextEdit> edit(
      TextDocumentContentChangeEvent change, Positions positions) {
    return text -> {
      Source source = text.source();
      Span span = change.getRange() == null
          ? new Span(0, source.length())
          : positions.span(source, change.getRange());
      return new TextEdit(span, change.getText());
    };
  }
}
