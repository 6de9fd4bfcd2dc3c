package dev.kettlemark.grammar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.antlr.v4.runtime.BaseErrorListener;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.Recognizer;
import org.antlr.v4.runtime.Token;
import org.junit.jupiter.api.Test;

/** Every text gives tokens that cover it without gap or overlap. */
class LexerTotalityTest {

  private static final List<String> PIECES = List.of(
      "\"",
      "#",
      "\n",
      "\r",
      "\r\n",
      " ",
      "\t",
      "\u00A0",
      "\uFEFF",
      "\u0000",
      "12",
      ".5",
      "1,2",
      "-",
      "–",
      "−",
      "/",
      "1/3",
      "%",
      "%RH",
      "°",
      "°C",
      "q",
      "q.",
      "q.s",
      "q.s.",
      "a",
      "é",
      "e\u0301",
      "𠮷",
      "🍯",
      "\uD83C",
      "\uDF6F",
      "±",
      "+",
      "+-",
      "+/",
      "=",
      ",",
      "'",
      "’",
      "_",
      "2026-03-0",
      "2026-03-04",
      "fl-oz",
      "fl-",
      "g/m",
      "g/mL",
      "stage",
      "of",
      "\\",
      "\u200B",
      "\u2028",
      "\u0085");

  @Test
  void coversEveryText() {
    Random random = new Random(20261124);
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int piece = random.nextInt(12); piece >= 0; piece--) {
        text.append(
            random.nextInt(5) == 0
                ? Character.toString((char) random.nextInt(0x10000))
                : PIECES.get(random.nextInt(PIECES.size())));
      }
      assertCovered(text.toString());
    }
  }

  private static void assertCovered(String text) {
    List<String> errors = new ArrayList<>();
    KettleLexer lexer = new KettleLexer(CharStreams.fromString(text));
    lexer.removeErrorListeners();
    lexer.addErrorListener(new BaseErrorListener() {
      @Override
      public void syntaxError(
          Recognizer<?, ?> recognizer,
          Object symbol,
          int line,
          int column,
          String message,
          RecognitionException e) {
        errors.add(message);
      }
    });
    int covered = 0;
    for (Token token : lexer.getAllTokens()) {
      assertEquals(covered, token.getStartIndex(), text);
      covered = token.getStopIndex() + 1;
      boolean crossesLine = token.getText().matches("(?s).*[\r\n].*");
      assertEquals(token.getType() == KettleLexer.NEWLINE, crossesLine, text);
      assertFalse(token.getText().isEmpty());
    }
    assertEquals(text.codePointCount(0, text.length()), covered, text);
    assertEquals(List.of(), errors, text);
  }
}
