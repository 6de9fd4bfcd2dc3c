package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class ReheatedFoamTest {

  private final RuleFixture reheatedFoam = RuleFixture.of(new ReheatedFoam());

  @Test
  void marksASetFoamThatIsWarmed() {
    reheatedFoam.check("""
        formula meringue
        stage body
          30 %    egg-white-pasteurised
          60 %    caster-sugar
          whip    until stiff-peak
          set     for 12 h
          warm    to 70 °C
          ^^^^ reheated-foam: a foam that has set is warmed to 70 °C
        """);
  }

  @Test
  void allowsAGentleWarmth() {
    reheatedFoam.check("""
        formula meringue
        stage body
          30 %    egg-white-pasteurised
          60 %    caster-sugar
          whip    until stiff-peak
          set     for 12 h
          warm    to 45 °C
        """);
  }

  @Test
  void leavesAFreshFoamAlone() {
    reheatedFoam.check("""
        formula meringue
        stage body
          30 %    egg-white-pasteurised
          60 %    caster-sugar
          whip    until stiff-peak
          rest    for 1 min
          warm    to 70 °C
        """);
  }

  @Test
  void leavesGelatineAlone() {
    reheatedFoam.check("""
        formula marshmallow
        stage body
          2 %     gelatine-200
          20 %    water
          soak    for 10 min
          warm    to 60 °C for 5 min
          whip    until firm-peak
          set     for 12 h
          warm    to 70 °C
        """);
  }

  @Test
  void isAnErrorWhereAllAirIsLost() {
    reheatedFoam.checkSeverity(Severity.ERROR, """
        formula meringue
        stage body
          30 %    egg-white-pasteurised
          60 %    caster-sugar
          whip    until stiff-peak
          set     for 12 h
          warm    to 70 °C
        """);
  }

  @Test
  void isAWarningBelow() {
    reheatedFoam.checkSeverity(Severity.WARNING, """
        formula meringue
        stage body
          30 %    egg-white-pasteurised
          60 %    caster-sugar
          whip    until stiff-peak
          set     for 12 h
          warm    to 55 °C
        """);
  }

  @Test
  void saysNever() {
    reheatedFoam.checkFix("Write that it must never be reheated", """
        formula meringue
        stage body
          30 %    egg-white-pasteurised
          60 %    caster-sugar
          whip    until stiff-peak
          set     for 12 h
          warm    to 70 °C
        """, """
        formula meringue
        stage body
          30 %    egg-white-pasteurised
          60 %    caster-sugar
          whip    until stiff-peak
          set     for 12 h
          never     reheat "A set foam loses its air and does not come back."
        """);
  }
}
