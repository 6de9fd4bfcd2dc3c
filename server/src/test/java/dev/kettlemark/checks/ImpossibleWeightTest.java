package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** By hand: 800 g of dry sugar stay; the batch weighs 1000 g, and what is missing is water. */
class ImpossibleWeightTest {

  private final RuleFixture impossibleWeight = RuleFixture.of(new ImpossibleWeight());

  @Test
  void marksMoreThanWentIn() {
    impossibleWeight.check("""
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
          measured  1.3 kg   weight of syrup
                    ^^^^^^ impossible-weight: `syrup` weighs 1300.0 g, but only 1000.0 g went in
        """);
  }

  @Test
  void marksLessThanItsSolids() {
    impossibleWeight.check("""
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
          measured  700 g    weight of syrup
                    ^^^^^ impossible-weight: `syrup` weighs 700.0 g, less than the 799.8 g that cannot boil away
        """);
  }

  @Test
  void leavesOnePercentToTheScales() {
    impossibleWeight.check("""
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
          measured  1005 g   weight of syrup
          measured  795 g    weight of syrup
        """);
  }

  @Test
  void countsWhatAStageTakes() {
    impossibleWeight.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        stage body
          0 % of charge    almond-paste
          all of    syrup
          mix       almond-paste, syrup
        trial T-1 of plain-syrup on 2026-03-02
          measured  900 g    weight of body
        """);
  }

  @Test
  void isCertainAboveTheCharge() {
    impossibleWeight.checkSeverity(Severity.ERROR, """
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
          measured  1300 g   weight of syrup
        """);
  }

  @Test
  void isOnlyLikelyBelowTheSolids() {
    impossibleWeight.checkSeverity(Severity.WARNING, """
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
          measured  700 g    weight of syrup
        """);
  }
}
