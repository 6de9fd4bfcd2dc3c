package dev.kettlemark.features;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.model.Connective;
import dev.kettlemark.syntax.Lexeme;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.SectionWord;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The words before the cursor, whatever the line as a whole says.
 *
 * @param entry the section of the line
 * @param stage the heading of the stage that the line stands in
 * @param line the line, counted from the section's start
 * @param before the words that end before the one under the cursor
 * @param word the name, the figure or the gap under the cursor
 * @param atMargin whether that word starts its line without indentation
 * @param isFigure whether that word starts with a digit
 */
record CursorLine(
    Entry entry,
    Optional<Line.SectionLine> stage,
    Span line,
    List<Token> before,
    Span word,
    boolean atMargin,
    boolean isFigure) {

  CursorLine {
    before = List.copyOf(before);
  }

  /** Empty in a comment and in quotes. */
  static Optional<CursorLine> at(Document document, int offset) {
    Source source = document.text().source();
    Entry entry = document.entryAt(offset);
    int distance = entry.placed().offset();
    int number = source.lineAt(offset);
    Span line = source.line(number);
    Span word = wordAt(source.text(), line, offset);
    List<Token> before = new ArrayList<>();
    for (Lexeme lexeme : entry.section().lexemes()) {
      Span span = lexeme.span().shiftedBy(distance);
      if (!line.contains(span) || span.start() >= offset) {
        continue;
      }
      if (lexeme.kind() == Lexeme.Kind.COMMENT
          || isQuoteAround(source.text(), lexeme, span, offset)) {
        return Optional.empty();
      }
      if (span.end() <= word.start()) {
        before.add(new Token(lexeme.kind(), span.of(source.text()), span));
      }
    }
    boolean isFigure = !word.isEmpty() && Character.isDigit(source.text().charAt(word.start()));
    return Optional.of(new CursorLine(
        entry,
        stageAbove(entry, number - source.lineAt(distance)),
        line.shiftedBy(-distance),
        before,
        word,
        word.start() == line.start(),
        isFigure));
  }

  boolean isIn(SectionWord section) {
    return entry.section().keyword().filter(section::equals).isPresent();
  }

  /** The name of what the section declares; empty where it has none. */
  String name() {
    return entry.declaration().map(declaration -> declaration.name().value()).orElse("");
  }

  Optional<Token> first() {
    return before.stream().findFirst();
  }

  String head() {
    return first().map(Token::text).orElse("");
  }

  Optional<Token> last() {
    return before.isEmpty() ? Optional.empty() : Optional.of(before.get(before.size() - 1));
  }

  boolean endsWith(Lexeme.Kind kind) {
    return last().filter(token -> token.is(kind)).isPresent();
  }

  boolean endsWith(String word) {
    return last().filter(token -> token.reads(word)).isPresent();
  }

  /** Whether the next word of a list is expected: behind its opener or behind a comma. */
  boolean expectsItem(int opener) {
    return before.size() == opener + 1 || last().filter(Token::isComma).isPresent();
  }

  /** Index of the last connective, or -1. */
  int lastConnective() {
    for (int i = before.size() - 1; i >= 0; i--) {
      if (before.get(i).is(Lexeme.Kind.CONNECTIVE) && !before.get(i).reads("per")) {
        return i;
      }
    }
    return -1;
  }

  Connective connective(int index) {
    return Connective.ofWord(before.get(index).text());
  }

  private static Optional<Line.SectionLine> stageAbove(Entry entry, int number) {
    Optional<Line.SectionLine> stage = Optional.empty();
    for (Line line : entry.section().lines().stream().limit(number).toList()) {
      if (line instanceof Line.SectionLine heading && heading.keyword() == SectionWord.STAGE) {
        stage = Optional.of(heading);
      }
    }
    return stage;
  }

  private static boolean isQuoteAround(String text, Lexeme lexeme, Span span, int offset) {
    boolean closed = span.length() > 1 && text.charAt(span.end() - 1) == '"';
    return lexeme.kind() == Lexeme.Kind.TEXT && (offset < span.end() || !closed);
  }

  private static Span wordAt(String text, Span line, int offset) {
    int start = offset;
    while (start > line.start() && isNamePart(text.charAt(start - 1))) {
      start--;
    }
    int end = offset;
    while (end < line.end() && isNamePart(text.charAt(end))) {
      end++;
    }
    return new Span(start, end);
  }

  /** Letters outside the basic plane come as surrogates, which count as letters here. */
  private static boolean isNamePart(char c) {
    return Character.isLetterOrDigit(c)
        || Character.isSurrogate(c)
        || Character.getType(c) == Character.NON_SPACING_MARK
        || c == '-'
        || c == '_'
        || c == '\''
        || c == '’'
        || c == '.';
  }
}
