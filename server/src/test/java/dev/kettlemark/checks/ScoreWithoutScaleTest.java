package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class ScoreWithoutScaleTest {

  private final RuleFixture scoreWithoutScale = RuleFixture.of(new ScoreWithoutScale());

  @Test
  void marksABareScore() {
    scoreWithoutScale.check("""
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
          scored    8 chew
                    ^ score-without-scale: a score of 8, but of how many?
        """);
  }

  @Test
  void staysQuietWithAScale() {
    scoreWithoutScale.check("""
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
          scored    8 of 10 chew
          scored    7 of 9 flavour by 4
        """);
  }

  @Test
  void writesTheScale() {
    scoreWithoutScale.checkFix("Write `8 of 10`", """
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
          scored    8 chew
        """, """
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
          scored    8 of 10 chew
        """);
  }

  @Test
  void writesAnotherScale() {
    scoreWithoutScale.checkFix("Write `4.5 of 5`", """
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
          scored    4.5 chew
        """, """
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
          scored    4.5 of 5 chew
        """);
  }
}
