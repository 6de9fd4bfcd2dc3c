package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class MismatchedConversionTest {

  private final RuleFixture mismatchedConversion = RuleFixture.of(new MismatchedConversion());

  /** NIST SP 811 (2008), B.8: 144 °C is 291.2 °F. */
  @Test
  void marksAFigureOfTheOtherScale() {
    mismatchedConversion.check("""
        formula syrup
          note    "Tried at 144 °C (290 °F)."
                                    ^^^ mismatched-conversion: 144 °C is 291 °F, not 290 °F
        """);
  }

  @Test
  void looksAtCommentsAndTheOtherOrder() {
    mismatchedConversion.check("""
        formula syrup
          # 248 °F = 121 °C
                     ^^^ mismatched-conversion: 248 °F is 120 °C, not 121 °C
          batch   1000 g
        """);
  }

  @Test
  void allowsWholeDegrees() {
    mismatchedConversion.check("""
        formula syrup
          note    "118 °C (244 °F), 120 °C / 248 °F, 302 °F (150 °C), -18 °C (0 °F)"
        """);
  }

  @Test
  void writesTheFigureRight() {
    mismatchedConversion.checkFix("Write `291 °F`", """
        formula syrup
          note    "Tried at 144 °C (290 °F)."
        """, """
        formula syrup
          note    "Tried at 144 °C (291 °F)."
        """);
  }

  @Test
  void writesCelsiusRight() {
    mismatchedConversion.checkFix("Write `120 °C`", """
        formula syrup
          note    "248 °F (121 °C)"
        """, """
        formula syrup
          note    "248 °F (120 °C)"
        """);
  }
}
