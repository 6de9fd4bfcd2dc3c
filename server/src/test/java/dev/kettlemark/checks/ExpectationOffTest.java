package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class ExpectationOffTest {

  private final RuleFixture expectationOff = RuleFixture.of(new ExpectationOff());

  @Test
  void marksAYieldThatTheBoilCannotLeave() {
    expectationOff.check("""
        formula caramel
          percent of charge
          expect  yield 90 % ± 2
                        ^^^^^^^^ expectation-off: the models give 77.9 to 79.5 % for the yield, not 88.0 to 92.0 %
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 120 °C
        """);
  }

  @Test
  void staysQuietWhereTheBandsMeet() {
    expectationOff.check("""
        formula caramel
          percent of charge
          expect  yield 77 % ± 1.5
          expect  moisture 9-12 %
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          cook    to 120 °C
        """);
  }

  /** A fondant's water activity is that of the liquor between its crystals. */
  @Test
  void holdsAGrainedMassAgainstItsMotherLiquor() {
    expectationOff.check("""
        formula fondant
          percent of charge
          texture short
          expect  water-activity 0.78-0.84
        stage pan
          75 %    white-sugar
          13 %    dried-glucose-syrup-38
          12 %    water
          mix
        """);
    expectationOff.check("""
        formula syrup
          percent of charge
          texture soft
          expect  water-activity 0.78-0.84
                                 ^^^^^^^^^ expectation-off: the models give 0.49 to 0.53 for the water activity, not 0.78 to 0.84
        stage pan
          75 %    white-sugar
          13 %    dried-glucose-syrup-38
          12 %    water
          mix
        """);
  }

  @Test
  void holdsADensityAgainstItsKind() {
    expectationOff.check("""
        formula foam
          percent of charge
          expect  density 0.60 g/mL
                          ^^^^^^^^^ expectation-off: the models give 0.10 to 0.17 g/mL for the density, not 0.60 g/mL
        stage bowl
          100 %   egg-white-pasteurised
          whip    until stiff-peak
        """);
  }

  @Test
  void staysQuietAboutWhatNoModelKnows() {
    expectationOff.check("""
        formula caramel
          percent of charge
          expect  crunch 7 %
          expect  yield
          expect  density 1.2 g/mL
        stage pan
          100 %   moon-dust
          mix
        """);
  }
}
