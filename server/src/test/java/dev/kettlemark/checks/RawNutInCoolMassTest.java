package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class RawNutInCoolMassTest {

  private final RuleFixture rawNutInCoolMass = RuleFixture.of(new RawNutInCoolMass());

  @Test
  void findsAGroundNutThatNothingHeats() {
    rawNutInCoolMass.check("""
        formula marzipan
          percent of charge
        stage bowl
          50 % almond-flour
               ^^^^^^^^^^^^ raw-nut-in-cool-mass: `almond-flour` is not heat-treated and gets no warmer than 21 °C
          50 % icing-sugar
          mix
        """);
  }

  @Test
  void staysQuietWhereItIsRoastedHeatedOrWhole() {
    rawNutInCoolMass.check("""
        formula marzipan
          percent of charge
        stage bowl
          30 % almond-paste
          20 % almond
          50 % icing-sugar
          mix
        formula baked
          percent of charge
        stage bowl
          50 % almond-flour
          50 % water
          mix
          warm to 95 °C
        """);
  }
}
