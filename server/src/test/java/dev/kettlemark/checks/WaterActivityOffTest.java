package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** A syrup of sucrose with 12 % water is far from saturated air; the model holds its own error of 0.05. */
class WaterActivityOffTest {

  private final RuleFixture waterActivityOff = RuleFixture.of(new WaterActivityOff());

  @Test
  void marksAMeasurementFarFromTheModel() {
    waterActivityOff.check("""
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
          measured  0.40 aw  of syrup
                    ^^^^^^^ water-activity-off: aw of syrup: 0.40 aw measured, 0.47–0.52 predicted
        """);
  }

  @Test
  void staysQuietNearIt() {
    waterActivityOff.check("""
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
          measured  0.54 aw  syrup at 24 h
        """);
  }

  @Test
  void leavesAnotherMeasurementAlone() {
    waterActivityOff.check("""
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
          measured  3.2 pH   syrup
        """);
  }

  @Test
  void isWorthKnowing() {
    waterActivityOff.checkSeverity(Severity.INFORMATION, """
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
          measured  0.40 aw  of syrup
        """);
  }
}
