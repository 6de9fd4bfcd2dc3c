package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class CutBeforeSetTest {

  private final RuleFixture cutBeforeSet = RuleFixture.of(new CutBeforeSet());

  @Test
  void marksAFoamThatIsCutSoon() {
    cutBeforeSet.check("""
        formula nougat
        stage body
          30 %    egg-white-pasteurised
          whip    until firm-peak
        stage slab
          all of  body
          deposit body
          set     for 30 min
          cut     40 x 20 mm
          ^^^ cut-before-set: it is cut 30 min after it is deposited; usual is 8 h at the least
        """);
  }

  @Test
  void marksOneThatIsCutAtOnce() {
    cutBeforeSet.check("""
        formula nougat
        stage body
          30 %    egg-white-pasteurised
          whip    until firm-peak
        stage slab
          all of  body
          deposit body
          cut     40 x 20 mm
          ^^^ cut-before-set: it is cut right after it is deposited
        """);
  }

  @Test
  void allowsTheUsualTime() {
    cutBeforeSet.check("""
        formula nougat
        stage body
          30 %    egg-white-pasteurised
          whip    until firm-peak
        stage slab
          all of  body
          deposit body
          set     for 8 h
          cut     40 x 20 mm
        """);
  }

  @Test
  void addsUpAllWaits() {
    cutBeforeSet.check("""
        formula nougat
        stage body
          30 %    egg-white-pasteurised
          whip    until firm-peak
        stage slab
          all of  body
          deposit body
          set     for 5 h
          rest    for 3 h
          cut     40 x 20 mm
        """);
  }

  @Test
  void leavesAWaitWithoutATimeAlone() {
    cutBeforeSet.check("""
        formula nougat
        stage body
          30 %    egg-white-pasteurised
          whip    until firm-peak
        stage slab
          all of  body
          deposit body
          set     at 18 °C
          cut     40 x 20 mm
        """);
  }

  @Test
  void leavesAgarAlone() {
    cutBeforeSet.check("""
        formula jelly
        stage pot
          1 %     agar
          90 %    water
          boil    for 3 min
          spread  all
          set     for 1 h
          cut     20 x 20 mm
        """);
  }

  @Test
  void leavesAGlassAlone() {
    cutBeforeSet.check("""
        formula brittle
        stage pan
          60 %    white-sugar
          20 %    water
          cook    to 150 °C
          spread  all
          cut     20 x 20 mm
        """);
  }

  @Test
  void isAWarningForLessThanHalf() {
    cutBeforeSet.checkSeverity(Severity.WARNING, """
        formula nougat
        stage body
          30 %    egg-white-pasteurised
          whip    until firm-peak
        stage slab
          all of  body
          deposit body
          set     for 3 h
          cut     40 x 20 mm
        """);
  }

  @Test
  void isWorthKnowingForMore() {
    cutBeforeSet.checkSeverity(Severity.INFORMATION, """
        formula nougat
        stage body
          30 %    egg-white-pasteurised
          whip    until firm-peak
        stage slab
          all of  body
          deposit body
          set     for 5 h
          cut     40 x 20 mm
        """);
  }

  @Test
  void setsItLonger() {
    cutBeforeSet.checkFix("Let it set for 12 h", """
        formula nougat
        stage body
          30 %    egg-white-pasteurised
          whip    until firm-peak
        stage slab
          all of  body
          deposit body
          set     for 30 min
          cut     40 x 20 mm
        """, """
        formula nougat
        stage body
          30 %    egg-white-pasteurised
          whip    until firm-peak
        stage slab
          all of  body
          deposit body
          set     for 12 h
          cut     40 x 20 mm
        """);
  }

  @Test
  void setsItAtAll() {
    cutBeforeSet.checkFix("Let it set for 12 h", """
        formula nougat
        stage body
          30 %    egg-white-pasteurised
          whip    until firm-peak
        stage slab
          all of  body
          deposit body
          cut     40 x 20 mm
        """, """
        formula nougat
        stage body
          30 %    egg-white-pasteurised
          whip    until firm-peak
        stage slab
          all of  body
          deposit body
          set       for 12 h at 18-20 °C
          cut     40 x 20 mm
        """);
  }
}
