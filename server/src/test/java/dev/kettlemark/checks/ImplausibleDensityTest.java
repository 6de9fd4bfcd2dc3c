package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** Salt crystals have 2.16 g/mL, from memory; saturated syrup of sucrose 1.33 g/mL (NBS Circular 440). */
class ImplausibleDensityTest {

  private final RuleFixture implausibleDensity = RuleFixture.of(new ImplausibleDensity());

  @Test
  void marksGramsPerLitre() {
    implausibleDensity.check("""
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
          density   1420 g/mL
                    ^^^^^^^^^ implausible-density: nothing in a kitchen has 1420 g/mL; materials lie from 0.1 to 1.6 g/mL
        """);
  }

  @Test
  void marksNothingAtAll() {
    implausibleDensity.check("""
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
          density   0 g/mL
                    ^^^^^^ implausible-density: nothing in a kitchen has 0 g/mL; materials lie from 0.1 to 1.6 g/mL
        """);
  }

  @Test
  void doubtsAHeavyCrystal() {
    implausibleDensity.check("""
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
          density   2.16 g/mL
                    ^^^^^^^^^ implausible-density: 2.16 g/mL is rare; kitchen materials lie from 0.1 to 1.6 g/mL
        """);
  }

  @Test
  void staysQuietOnUsualFigures() {
    implausibleDensity.check("""
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
          density   1.42 g/mL
        ingredient oat-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
          density   0.12 g/mL bulk
        """);
  }

  @Test
  void isCertainFarOutside() {
    implausibleDensity.checkSeverity(Severity.ERROR, """
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
          density   400 g/mL bulk
        """);
  }

  @Test
  void isOnlyADoubtNearby() {
    implausibleDensity.checkSeverity(Severity.WARNING, """
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
          density   2.16 g/mL
        """);
  }

  @Test
  void takesItForGramsPerLitre() {
    implausibleDensity.checkFix("Write `0.4 g/mL`, if it was grams per litre", """
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
          density   400 g/mL bulk
        """, """
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
          density   0.4 g/mL bulk
        """);
  }
}
