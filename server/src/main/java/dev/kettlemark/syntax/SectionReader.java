package dev.kettlemark.syntax;

import dev.kettlemark.grammar.KettleLexer;
import dev.kettlemark.grammar.KettleParser;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.PredictionMode;

/** Reads the text of one section into its tree. */
final class SectionReader {

  private SectionReader() {}

  static Section.Tree read(String text) {
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
    return new Section.Tree(keyword(lines), lines, lexemes(tokens, offsets), problems);
  }

  private static Optional<SectionWord> keyword(List<Line> lines) {
    if (lines.isEmpty() || !(lines.get(0) instanceof Line.SectionLine first)) {
      return Optional.empty();
    }
    return Optional.of(first.keyword()).filter(SectionWord::opensSection);
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
