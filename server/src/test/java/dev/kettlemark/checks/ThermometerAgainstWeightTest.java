package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** Candy handbooks give 123 °C for sucrose syrup of 90 % solids, so 889 g of the 1000 g below; from memory. */
class ThermometerAgainstWeightTest {

  private final RuleFixture thermometerAgainstWeight =
      RuleFixture.of(new ThermometerAgainstWeight());

  @Test
  void marksAProbeThatReadsTooHigh() {
    thermometerAgainstWeight.check("""
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
          measured  135 °C   end of syrup
                    ^^^^^^ thermometer-against-weight: the probe read 135.0 °C, but 889.0 g of `syrup` hold 10.0 % water, which boils at 122 °C
          measured  889 g    weight of syrup
        """);
  }

  @Test
  void marksAWeightThatHoldsAResidue() {
    thermometerAgainstWeight.check("""
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
          measured  118 °C   end of syrup
                    ^^^^^^ thermometer-against-weight: the probe read 118.0 °C, but 940.0 g of `syrup` hold 14.9 % water, which boils at 114 °C
          measured  940 g    weight of syrup
        """);
  }

  @Test
  void staysQuietWithinTwoPoints() {
    thermometerAgainstWeight.check("""
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
          measured  123 °C   end of syrup
          measured  889 g    weight of syrup
        """);
  }

  @Test
  void needsBothReadings() {
    thermometerAgainstWeight.check("""
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
          measured  135 °C   end of syrup
        """);
  }

  @Test
  void leavesAnImpossibleWeightAlone() {
    thermometerAgainstWeight.check("""
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
          measured  135 °C   end of syrup
          measured  700 g    weight of syrup
        """);
  }
}
