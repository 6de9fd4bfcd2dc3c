package dev.kettlemark.features;

import dev.kettlemark.syntax.Lexeme;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.ParsedText;
import dev.kettlemark.syntax.ParsedText.PlacedSection;
import dev.kettlemark.syntax.SectionWord;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A line of a text with its words; all offsets count from the start of the text.
 *
 * @param number from 0
 * @param span without the line end, and without the byte order mark of the first line
 * @param section the word that opens the section it stands in
 * @param line its shape
 * @param tokens its words, without the comment
 * @param comment what stands behind {@code #}
 * @param broken whether something on it could not be read
 */
record WrittenLine(
    int number,
    Span span,
    Optional<SectionWord> section,
    Line line,
    List<Token> tokens,
    Optional<Token> comment,
    boolean broken) {

  private static final String FIGURE = "[-−]?\\d+(\\.\\d+)?";

  /** What the lexer lets pass as a number is wider, so that a wrong one gets a message of its own. */
  private static final Pattern NUMBER =
      Pattern.compile(FIGURE + "([^0-9.,]*[-–—−][^0-9.,−-]*" + FIGURE + ")?|\\d+/\\d+");

  WrittenLine {
    tokens = List.copyOf(tokens);
  }

  boolean isBlank() {
    return tokens.isEmpty() && comment.isEmpty();
  }

  /** Whether it holds a comment and nothing else. */
  boolean isComment() {
    return tokens.isEmpty() && comment.isPresent();
  }

  /** Whether it opens a section or a stage. */
  boolean isHeading() {
    return line instanceof Line.SectionLine;
  }

  boolean opensStage() {
    return line instanceof Line.SectionLine heading && heading.keyword() == SectionWord.STAGE;
  }

  /**
   * All lines of a text in order, the empty one behind its last line end among them; of one so long that
   * nothing else is read, the headings.
   */
  static List<WrittenLine> of(ParsedText text) {
    List<WrittenLine> lines = new ArrayList<>(text.source().lineCount());
    text.sections().forEach(placed -> addLines(text, placed, lines));
    return lines;
  }

  /** The lines of one section. */
  static List<WrittenLine> of(ParsedText text, PlacedSection placed) {
    List<WrittenLine> lines = new ArrayList<>();
    addLines(text, placed, lines);
    return lines;
  }

  private static void addLines(ParsedText text, PlacedSection placed, List<WrittenLine> lines) {
    Source source = text.source();
    int first = source.lineAt(placed.offset());
    int next = placed.end() < source.length() && !text.isHeadingsOnly()
        ? source.lineAt(placed.end())
        : first + placed.section().lines().size();
    addLines(source, placed, first, next, lines);
  }

  private static void addLines(
      Source source, PlacedSection placed, int first, int next, List<WrittenLine> lines) {
    BitSet broken = new BitSet();
    placed
        .section()
        .problems()
        .forEach(
            problem -> broken.set(source.lineAt(placed.offset() + problem.span().start())));
    List<Lexeme> lexemes = placed.section().lexemes();
    int lexeme = 0;
    for (int number = first; number < next; number++) {
      Span span = withoutMark(source, source.line(number));
      List<Token> tokens = new ArrayList<>();
      Optional<Token> comment = Optional.empty();
      while (lexeme < lexemes.size()
          && lexemes.get(lexeme).span().start() + placed.offset() < span.end()) {
        Token token = token(source, placed, lexemes.get(lexeme++));
        if (token.is(Lexeme.Kind.COMMENT)) {
          comment = Optional.of(token);
        } else {
          tokens.add(token);
        }
      }
      lines.add(new WrittenLine(
          number,
          span,
          placed.section().keyword(),
          placed.section().lines().get(number - first),
          tokens,
          comment,
          broken.get(number) || tokens.stream().anyMatch(WrittenLine::isMalformed)));
    }
  }

  private static Span withoutMark(Source source, Span line) {
    boolean marked = line.start() == 0 && source.text().startsWith("\uFEFF");
    return marked ? new Span(1, line.end()) : line;
  }

  private static Token token(Source source, PlacedSection placed, Lexeme lexeme) {
    Span span = lexeme.span().shiftedBy(placed.offset());
    return new Token(lexeme.kind(), span.of(source.text()), span);
  }

  private static boolean isMalformed(Token token) {
    return token.is(Lexeme.Kind.NUMBER) && !NUMBER.matcher(token.text()).matches();
  }
}
