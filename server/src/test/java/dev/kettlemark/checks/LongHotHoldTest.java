package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class LongHotHoldTest {

  private final RuleFixture longHotHold = RuleFixture.of(new LongHotHold());

  @Test
  void marksALongWait() {
    longHotHold.check("""
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 150 °C
          hold    at 150 °C for 10 min
                                ^^^^^^ long-hot-hold: the syrup waits for 10 min at 150 °C
        """);
  }

  @Test
  void isAWarningBeyondTheLimit() {
    longHotHold.checkSeverity(Severity.WARNING, """
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 150 °C
          hold    at 150 °C for 10 min
        """);
  }

  @Test
  void isOnlyWorthKnowingUpToIt() {
    longHotHold.checkSeverity(Severity.INFORMATION, """
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 150 °C
          stand   for 5 min
        """);
  }

  @Test
  void allowsAMomentAndAMildWait() {
    longHotHold.check("""
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 150 °C
          hold    at 150 °C for 30 s
          cool    to 130 °C
          hold    at 130 °C for 20 min
        """);
  }

  @Test
  void shocksThePanInstead() {
    longHotHold.checkFix("Cool it to 130 °C instead", """
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 150 °C
          hold    at 150 °C for 10 min
        """, """
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 150 °C
          cool      to 130 °C
        """);
  }
}
