package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class HotSecondSyrupTest {

  private final RuleFixture hotSecondSyrup = RuleFixture.of(new HotSecondSyrup());

  @Test
  void marksAPairOfHardSyrups() {
    hotSecondSyrup.check("""
        formula nougat
          batch   2000 g
          texture chewy
        stage foam
           1.2 %  egg-white-powder
           6.0 %  water
          disperse egg-white-powder in water
          whip    on medium until soft-peak
        stage first
          32.0 %  white-sugar
          18.8 %  glucose-syrup-42
          12.0 %  water
          cook    to 140 °C
        stage second
          12.0 %  white-sugar
          12.0 %  glucose-syrup-42
           6.0 %  water
          cook    to 136 °C
                     ^^^^^^ hot-second-syrup: every syrup of this foam is cooked to 136 °C or more
        stage body
          all of  foam
          all of  first
          all of  second
          stream  first into foam over 90 s
          stream  second into foam over 45 s
        """);
  }

  @Test
  void allowsAMildSecondSyrup() {
    hotSecondSyrup.check("""
        formula nougat
          batch   2000 g
          texture chewy
        stage foam
           1.2 %  egg-white-powder
           6.0 %  water
          disperse egg-white-powder in water
          whip    on medium until soft-peak
        stage first
          32.0 %  white-sugar
          18.8 %  glucose-syrup-42
          12.0 %  water
          cook    to 140 °C
        stage second
          12.0 %  white-sugar
          12.0 %  glucose-syrup-42
           6.0 %  water
          cook    to 128 °C
        stage body
          all of  foam
          all of  first
          all of  second
          stream  first into foam over 90 s
          stream  second into foam over 45 s
        """);
  }

  @Test
  void allowsHardSyrupsInAHardFoam() {
    hotSecondSyrup.check("""
        formula nougat
          batch   2000 g
          texture hard
        stage foam
           1.2 %  egg-white-powder
           6.0 %  water
          disperse egg-white-powder in water
          whip    on medium until soft-peak
        stage first
          32.0 %  white-sugar
          18.8 %  glucose-syrup-42
          12.0 %  water
          cook    to 146 °C
        stage second
          12.0 %  white-sugar
          12.0 %  glucose-syrup-42
           6.0 %  water
          cook    to 146 °C
        stage body
          all of  foam
          all of  first
          all of  second
          stream  first into foam over 90 s
          stream  second into foam over 45 s
        """);
  }

  @Test
  void leavesOneSyrupAlone() {
    hotSecondSyrup.check("""
        formula nougat
          batch   2000 g
          texture chewy
        stage foam
           1.2 %  egg-white-powder
           6.0 %  water
          disperse egg-white-powder in water
          whip    on medium until soft-peak
        stage first
          32.0 %  white-sugar
          18.8 %  glucose-syrup-42
          12.0 %  water
          cook    to 140 °C
        stage second
          12.0 %  white-sugar
          12.0 %  glucose-syrup-42
           6.0 %  water
          cook    to 136 °C
        stage body
          all of  foam
          all of  first
          all of  second
          stream  first into foam over 90 s
        """);
  }

  @Test
  void isAnErrorWhereItSurelySnaps() {
    hotSecondSyrup.checkSeverity(Severity.ERROR, """
        formula nougat
          batch   2000 g
          texture chewy
        stage foam
           1.2 %  egg-white-powder
           6.0 %  water
          disperse egg-white-powder in water
          whip    on medium until soft-peak
        stage first
          32.0 %  white-sugar
          18.8 %  glucose-syrup-42
          12.0 %  water
          cook    to 148 °C
        stage second
          12.0 %  white-sugar
          12.0 %  glucose-syrup-42
           6.0 %  water
          cook    to 146 °C
        stage body
          all of  foam
          all of  first
          all of  second
          stream  first into foam over 90 s
          stream  second into foam over 45 s
        """);
  }

  @Test
  void cooksTheSecondLessFar() {
    hotSecondSyrup.checkFix("Cook to 124 °C", """
        formula nougat
          batch   2000 g
          texture chewy
        stage foam
           1.2 %  egg-white-powder
           6.0 %  water
          disperse egg-white-powder in water
          whip    on medium until soft-peak
        stage first
          32.0 %  white-sugar
          18.8 %  glucose-syrup-42
          12.0 %  water
          cook    to 140 °C
        stage second
          12.0 %  white-sugar
          12.0 %  glucose-syrup-42
           6.0 %  water
          cook    to 136 °C
        stage body
          all of  foam
          all of  first
          all of  second
          stream  first into foam over 90 s
          stream  second into foam over 45 s
        """, """
        formula nougat
          batch   2000 g
          texture chewy
        stage foam
           1.2 %  egg-white-powder
           6.0 %  water
          disperse egg-white-powder in water
          whip    on medium until soft-peak
        stage first
          32.0 %  white-sugar
          18.8 %  glucose-syrup-42
          12.0 %  water
          cook    to 140 °C
        stage second
          12.0 %  white-sugar
          12.0 %  glucose-syrup-42
           6.0 %  water
          cook    to 124 °C
        stage body
          all of  foam
          all of  first
          all of  second
          stream  first into foam over 90 s
          stream  second into foam over 45 s
        """);
  }
}
