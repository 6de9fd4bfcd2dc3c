package dev.kettlemark.syntax;

import dev.kettlemark.grammar.KettleParser;
import dev.kettlemark.text.Excerpt;
import dev.kettlemark.text.Span;
import java.util.List;
import org.antlr.v4.runtime.DefaultErrorStrategy;
import org.antlr.v4.runtime.InputMismatchException;
import org.antlr.v4.runtime.NoViableAltException;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.RuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.IntervalSet;
import org.jspecify.annotations.Nullable;

/**
 * Recovers as ANTLR does, at the line's end at the latest, and says in plain words what is wrong.
 *
 * <p>Only one problem is told for a line: the rest mostly follow from the first.
 */
final class LineRecovery extends DefaultErrorStrategy {

  private static final IntervalSet LINE_END = new IntervalSet(KettleParser.NEWLINE, Token.EOF);

  private final Offsets offsets;
  private final List<SyntaxProblem> problems;

  /** Index of the last token that a problem was told of; -1 before the first. */
  private int lastTold = -1;

  LineRecovery(Offsets offsets, List<SyntaxProblem> problems) {
    this.offsets = offsets;
    this.problems = problems;
  }

  @Override
  protected void reportNoViableAlternative(Parser recognizer, NoViableAltException e) {
    report(recognizer, e.getOffendingToken());
  }

  @Override
  protected void reportInputMismatch(Parser recognizer, InputMismatchException e) {
    report(recognizer, e.getOffendingToken());
  }

  @Override
  public void reportError(Parser recognizer, RecognitionException e) {
    if (!inErrorRecoveryMode(recognizer)) {
      beginErrorCondition(recognizer);
      report(recognizer, e.getOffendingToken());
    }
  }

  @Override
  protected void reportUnwantedToken(Parser recognizer) {
    if (!inErrorRecoveryMode(recognizer)) {
      beginErrorCondition(recognizer);
      report(recognizer, recognizer.getCurrentToken());
    }
  }

  @Override
  protected void reportMissingToken(Parser recognizer) {
    reportUnwantedToken(recognizer);
  }

  /** What is left over behind a line goes with that line; the next one starts afresh. */
  @Override
  public void sync(Parser recognizer) {
    boolean betweenLines =
        recognizer.getContext().getRuleIndex() == KettleParser.RULE_standaloneText;
    if (!betweenLines) {
      super.sync(recognizer);
    } else if (recognizer.getCurrentToken().getType() != KettleParser.NEWLINE
        && recognizer.getCurrentToken().getType() != Token.EOF
        && recognizer.getContext().getChildCount() > 0) {
      reportUnwantedToken(recognizer);
      consumeUntil(recognizer, LINE_END);
    }
  }

  /** A line end is never thrown away to get further: it ends the broken line. */
  @Override
  public void recover(Parser recognizer, RecognitionException e) {
    if (!endsLine(recognizer.getCurrentToken())) {
      super.recover(recognizer, e);
    }
  }

  /** No word is thrown away to reach one that fits: the line is left as far as it was read. */
  @Override
  protected @Nullable Token singleTokenDeletion(Parser recognizer) {
    return null;
  }

  /** Nothing is made up where a word is missing: the line is left as far as it was read. */
  @Override
  protected boolean singleTokenInsertion(Parser recognizer) {
    return false;
  }

  private void report(Parser recognizer, Token offending) {
    boolean sameLine = isOnLineOfLast(recognizer, offending);
    lastTold = offending.getTokenIndex();
    if (sameLine) {
      return;
    }
    Token before = recognizer.getInputStream().LT(-1);
    Span span = offsets.of(offending);
    if (endsLine(offending) && before != null) {
      span = offsets.of(before);
    }
    problems.add(new SyntaxProblem(span, message(recognizer, offending, before)));
  }

  /** Looks for a line end between two problems; the lexer's own line numbers overlook CR. */
  private boolean isOnLineOfLast(Parser recognizer, Token offending) {
    if (lastTold < 0) {
      return false;
    }
    for (int i = lastTold; i < offending.getTokenIndex(); i++) {
      if (recognizer.getInputStream().get(i).getType() == KettleParser.NEWLINE) {
        return false;
      }
    }
    return true;
  }

  private static String message(Parser recognizer, Token offending, @Nullable Token before) {
    int previous = before == null ? Token.EOF : before.getType();
    if (before != null && previous == KettleParser.TOLERANCE) {
      return "a tolerance needs a number behind " + quoted(before) + ", as in `143 °C ± 1`";
    }
    if (previous == KettleParser.PER) {
      return "a rate needs a unit behind `per`, as in `per kg`";
    }
    if (isTake(recognizer.getContext())) {
      return "what is taken is written `all of NAME` or `part 1/2 of NAME`";
    }
    return switch (offending.getType()) {
      case KettleParser.UNIT ->
        previous == KettleParser.STAGE
            ? quoted(offending) + " is a unit and can be no name; take another, as in `stage foam`"
            : previous == KettleParser.UNIT
                ? "a figure has one unit; " + quoted(offending) + " is a second one"
                : "the unit " + quoted(offending) + " has no number before it, as in `12 g`";
      case KettleParser.TOLERANCE ->
        quoted(offending) + " stands behind a number and its unit, as in `143 °C ± 1`";
      case KettleParser.EQUALS ->
        "`=` stands only in a basis, as in `basis liquid = water in foam`";
      case KettleParser.COMMA -> "nothing stands before this comma; a comma parts two things";
      case KettleParser.NEWLINE, Token.EOF -> lineEnd(previous);
      default -> misplaced(offending, previous);
    };
  }

  private static String lineEnd(int previous) {
    return switch (previous) {
      case KettleParser.COMMA -> "nothing follows this comma; a list goes on on its own line only";
      case KettleParser.EQUALS -> "nothing follows `=`; a basis names what it is the sum of";
      case KettleParser.IN -> "nothing follows `in`; it names the stage, as in `water in foam`";
      default -> "the line ends too early";
    };
  }

  private static String misplaced(Token offending, int previous) {
    if (previous == KettleParser.EQUALS || previous == KettleParser.IN) {
      return "a basis is a sum of names, as in `basis liquid = water in foam`; "
          + quoted(offending)
          + " is none";
    }
    return quoted(offending) + " cannot stand here";
  }

  private static String quoted(Token token) {
    return Excerpt.of(token.getText());
  }

  private static boolean isTake(RuleContext context) {
    return context instanceof KettleParser.TakeAllLineContext
        || context instanceof KettleParser.TakePartLineContext
        || (context instanceof KettleParser.QuantityContext
            && context.parent instanceof KettleParser.TakePartLineContext);
  }

  private static boolean endsLine(Token token) {
    return token.getType() == Token.EOF || token.getType() == KettleParser.NEWLINE;
  }
}
