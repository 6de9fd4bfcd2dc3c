package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class FoamLeftStandingTest {

  private final RuleFixture foamLeftStanding = RuleFixture.of(new FoamLeftStanding());

  @Test
  void marksAFoamThatStands() {
    foamLeftStanding.check("""
        formula nougat
        stage body
          30 %    egg-white-pasteurised
          whip    until firm-peak
          stand   for 20 min
          ^^^^^ foam-left-standing: the whipped mass stands still for 20 min before it is deposited
        stage slab
          all of  body
          deposit body
        """);
  }

  @Test
  void allowsTheLimit() {
    foamLeftStanding.check("""
        formula nougat
        stage body
          30 %    egg-white-pasteurised
          whip    until firm-peak
          stand   for 5 min
        stage slab
          all of  body
          deposit body
        """);
  }

  @Test
  void isContentWithAWhiskThatRuns() {
    foamLeftStanding.check("""
        formula nougat
        stage body
          30 %    egg-white-pasteurised
          whip    until firm-peak
          keep    whisking until deposit
          stand   for 20 min
        stage slab
          all of  body
          deposit body
        """);
  }

  @Test
  void isContentWithAWarmMass() {
    foamLeftStanding.check("""
        formula nougat
        stage body
          30 %    egg-white-pasteurised
          whip    until firm-peak
          keep    above 70 °C
          stand   for 20 min
        stage slab
          all of  body
          deposit body
        """);
  }

  @Test
  void leavesAFoamThatIsWhippedAgainAlone() {
    foamLeftStanding.check("""
        formula nougat
        stage body
          30 %    egg-white-pasteurised
          whip    until firm-peak
          stand   for 20 min
          whip    until firm-peak
        stage slab
          all of  body
          deposit body
        """);
  }

  @Test
  void leavesASetFoamAlone() {
    foamLeftStanding.check("""
        formula nougat
        stage body
          30 %    egg-white-pasteurised
          whip    until firm-peak
          set     for 12 h
        stage slab
          all of  body
          deposit body
        """);
  }

  @Test
  void keepsTheWhiskGoing() {
    foamLeftStanding.checkFix("Keep whisking until deposit", """
        formula nougat
        stage body
          30 %    egg-white-pasteurised
          whip    until firm-peak
          stand   for 20 min
        stage slab
          all of  body
          deposit body
        """, """
        formula nougat
        stage body
          30 %    egg-white-pasteurised
          whip    until firm-peak
          keep      whisking until deposit
          stand   for 20 min
        stage slab
          all of  body
          deposit body
        """);
  }
}
