package dev.kettlemark.protocol.wire;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** Nesting as RFC 8259 (IETF, 2017), section 9, lets a parser limit it; strings as in its section 7. */
class JsonDepthTest {

  private static final String DEEPEST = "[".repeat(JsonDepth.DEEPEST);

  @Test
  void acceptsTheLimitAndRefusesOneMore() {
    assertDoesNotThrow(() -> JsonDepth.check(DEEPEST + "]".repeat(JsonDepth.DEEPEST)));
    assertThrows(Refusal.class, () -> JsonDepth.check(DEEPEST + "["));
    assertThrows(Refusal.class, () -> JsonDepth.check("{\"a\":" + DEEPEST));
  }

  @Test
  void countsWhatIsOpenNotWhatWasOpened() {
    assertDoesNotThrow(() -> JsonDepth.check("[" + "[],{},".repeat(JsonDepth.DEEPEST) + "1]"));
  }

  @Test
  void readsStringsWithEscapedQuotesAndBackslashes() {
    assertDoesNotThrow(() -> JsonDepth.check("\"\\\"" + DEEPEST + "[\""));
    assertDoesNotThrow(() -> JsonDepth.check("\"" + DEEPEST + "[\\"));
    assertThrows(Refusal.class, () -> JsonDepth.check("\"\\\\\"" + DEEPEST + "["));
  }

  @Test
  void leavesTextThatIsNoJsonToTheParser() {
    assertDoesNotThrow(() -> JsonDepth.check("]]}}\"unclosed"));
    assertThrows(Refusal.class, () -> Envelope.of("]]}}\"unclosed"));
  }
}
