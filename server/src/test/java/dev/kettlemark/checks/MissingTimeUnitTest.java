package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class MissingTimeUnitTest {

  private final RuleFixture missingTimeUnit = RuleFixture.of(new MissingTimeUnit());

  @Test
  void marksATimeWithoutUnit() {
    missingTimeUnit.check("""
        formula foam
        stage foam
          100.00 % egg-white-pasteurised
          whip on high for 90
                           ^^ missing-time-unit: 90 of which unit of time: `90 s` or `90 min`
          stand for 30
                    ^^ missing-time-unit: 30 of which unit of time: `30 min` or `30 s`
          set for 12 at 18 °C
                  ^^ missing-time-unit: 12 of which unit of time: `12 h` or `12 min`
        """);
  }

  @Test
  void marksTheTimeOfAnAddition() {
    missingTimeUnit.check("""
        formula foam
        stage foam
          100.00 % egg-white-pasteurised
          pour egg-white-pasteurised over 45 while whisking on low
                                          ^^ missing-time-unit: 45 of which unit of time: `45 s` or `45 min`
          deposit within 10
                         ^^ missing-time-unit: 10 of which unit of time: `10 min` or `10 s`
        """);
  }

  @Test
  void knowsAUnitWrittenOut() {
    missingTimeUnit.check("""
        formula foam
        stage foam
          100.00 % egg-white-pasteurised
          whip for 3 minutes
                     ^^^^^^^ missing-time-unit: the unit `minutes` is written `min`
          whip for 90 Sec
                      ^^^ missing-time-unit: the unit `Sec` is written `s`
        """);
  }

  @Test
  void staysQuietWhereTheUnitStandsOrNoTimeIsMeant() {
    missingTimeUnit.check("""
        formula foam
          note "for 90"
        stage foam
          100.00 % egg-white-pasteurised
          whip for 90 s
          whip for 3-4 min
          keep whisking until deposit
        sheet foam-home of foam for home in en-GB
        """);
  }

  @Test
  void offersSecondsFirstForALongWhip() {
    missingTimeUnit.checkFirstFix("Write `90 s`", foam("whip for 90"), foam("whip for 90 s"));
    missingTimeUnit.checkFix("Write `90 min`", foam("whip for 90"), foam("whip for 90 min"));
  }

  @Test
  void offersHoursFirstForSetting() {
    missingTimeUnit.checkFirstFix("Write `12 h`", foam("set for 12"), foam("set for 12 h"));
    missingTimeUnit.checkFix("Write `12 min`", foam("set for 12"), foam("set for 12 min"));
  }

  @Test
  void writesTheUnitItsOwnWay() {
    missingTimeUnit.checkFix("Write `h`", foam("rest for 2 hours"), foam("rest for 2 h"));
  }

  private static String foam(String step) {
    return "formula foam\nstage foam\n  100.00 % egg-white-pasteurised\n  " + step + "\n";
  }
}
