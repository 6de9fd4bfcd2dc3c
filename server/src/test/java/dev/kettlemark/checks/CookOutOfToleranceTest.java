package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class CookOutOfToleranceTest {

  private final RuleFixture cookOutOfTolerance = RuleFixture.of(new CookOutOfTolerance());

  @Test
  void marksACookThatWentTooFar() {
    cookOutOfTolerance.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        trial T-1 of plain-syrup on 2026-03-02
          measured  121 °C   end of syrup
                    ^^^^^^ cook-out-of-tolerance: `syrup` was cooked to 121.0 °C, and its step allows 117.0–119.0 °C
        """);
  }

  @Test
  void staysQuietAtTheEndsOfTheTolerance() {
    cookOutOfTolerance.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        trial T-1 of plain-syrup on 2026-03-02
          measured  119 °C   end of syrup
          measured  117 °C   end of syrup
        """);
  }

  /** NIST SP 811 (2008), B.8: 246.2 °F are 119 °C. */
  @Test
  void readsFahrenheit() {
    cookOutOfTolerance.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        trial T-1 of plain-syrup on 2026-03-02
          measured  246.2 °F end of syrup
          measured  250 °F   end of syrup
                    ^^^^^^ cook-out-of-tolerance: `syrup` was cooked to 121.1 °C, and its step allows 117.0–119.0 °C
        """);
  }

  @Test
  void leavesAStepWithoutToleranceAlone() {
    cookOutOfTolerance.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C
        trial T-1 of plain-syrup on 2026-03-02
          measured  121 °C   end of syrup
        """);
  }

  @Test
  void leavesATemperatureThatIsNoEndAlone() {
    cookOutOfTolerance.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        trial T-1 of plain-syrup on 2026-03-02
          measured  60 °C    temperature of syrup
        """);
  }

  @Test
  void isOnlyWorthKnowingOfAChangedBatch() {
    cookOutOfTolerance.checkSeverity(Severity.INFORMATION, """
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        trial T-1 of plain-syrup on 2026-03-02
          changed   "cooked further"
          measured  121 °C   end of syrup
        """);
  }
}
