package dev.kettlemark.syntax;

import dev.kettlemark.grammar.KettleLexer;
import dev.kettlemark.grammar.KettleParser;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.PredictionMode;

/** Reads the text of one section into its tree. */
final class SectionReader {

  private SectionReader() {}

  static SectionTree read(String text) {
    Offsets offsets = Offsets.of(text);
    List<SyntaxProblem> problems = new ArrayList<>();
    KettleLexer lexer = new KettleLexer(CharStreams.fromString(text));
    lexer.removeErrorListeners();
    CommonTokenStream tokens = new CommonTokenStream(lexer);
    KettleParser parser = new KettleParser(tokens);
    parser.removeErrorListeners();
    parser.setErrorHandler(new LineRecovery(offsets, problems));
    // The grammar is SLL-clean (asserted by a test), so full-context prediction never differs.
    parser.getInterpreter().setPredictionMode(PredictionMode.SLL);
    LineBuilder builder = new LineBuilder(offsets, problems);
    List<Line> lines = new ArrayList<>();
    for (KettleParser.LineContext line : parser.standaloneText().lines) {
      lines.add(builder.line(line));
    }
    problems.sort(Comparator.comparingInt(problem -> problem.span().start()));
    return new SectionTree(text, lines, lexemes(tokens, offsets), problems);
  }

  /**
   * Reads a text that resembles one that was read before.
   *
   * <p>Of the lines with which both start and end, what was read is taken over; only those between are read.
   */
  static SectionTree read(String text, SectionTree before) {
    int start = before.sameStart(text);
    int rest = before.sameEnd(text, start);
    return before.with(read(text.substring(start, text.length() - rest)), start, rest);
  }

  private static List<Lexeme> lexemes(CommonTokenStream tokens, Offsets offsets) {
    List<Lexeme> lexemes = new ArrayList<>();
    for (Token token : tokens.getTokens()) {
      int type = token.getType();
      if (type != Token.EOF && type != KettleLexer.NEWLINE && type != KettleLexer.SPACE) {
        Span span = offsets.of(token);
        lexemes.add(new Lexeme(kind(type), span));
      }
    }
    return lexemes;
  }

  private static Lexeme.Kind kind(int type) {
    if (type >= KettleLexer.HOUSE && type <= KettleLexer.SHEET) {
      return Lexeme.Kind.SECTION_WORD;
    }
    if (type >= KettleLexer.OF && type <= KettleLexer.PER) {
      return Lexeme.Kind.CONNECTIVE;
    }
    return switch (type) {
      case KettleLexer.ALL, KettleLexer.PART, KettleLexer.SUFFICIENT -> Lexeme.Kind.AMOUNT_WORD;
      case KettleLexer.UNIT -> Lexeme.Kind.UNIT;
      case KettleLexer.NUMBER, KettleLexer.RANGE, KettleLexer.FRACTION -> Lexeme.Kind.NUMBER;
      case KettleLexer.DATE -> Lexeme.Kind.DATE;
      case KettleLexer.NAME -> Lexeme.Kind.NAME;
      case KettleLexer.STRING -> Lexeme.Kind.TEXT;
      case KettleLexer.COMMENT -> Lexeme.Kind.COMMENT;
      case KettleLexer.STRAY -> Lexeme.Kind.STRAY;
      default -> Lexeme.Kind.SYMBOL;
    };
  }
}
