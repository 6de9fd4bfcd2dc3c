package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class MoistureOffTest {

  private final RuleFixture moistureOff = RuleFixture.of(new MoistureOff());

  @Test
  void marksAChewThatFlows() {
    moistureOff.check("""
        formula sweet
          batch   1000 g
          texture chewy
                  ^^^^^ moisture-off: it holds 25.1–26.6 % water, and a chew is 5–18 %
        stage pan
          40.00 % white-sugar
          35.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 106 °C
        """);
  }

  @Test
  void marksAChewThatBreaksTeeth() {
    moistureOff.check("""
        formula sweet
          batch   1000 g
          texture chewy
                  ^^^^^ moisture-off: it holds 1.8–3.8 % water, and a chew is 5–18 %
        stage pan
          40.00 % white-sugar
          35.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 150 °C
        """);
  }

  @Test
  void staysQuietWhereTheBandReaches() {
    moistureOff.check("""
        formula sweet
          batch   1000 g
          texture chewy
        stage pan
          40.00 % white-sugar
          35.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 112 °C
        """);
  }

  @Test
  void asksLessOfAFoam() {
    moistureOff.check("""
        formula nougat
          batch   2000 g
          texture chewy
                  ^^^^^ moisture-off: it holds 20.0–21.5 % water, and a chewy foam is 5–15 %
        stage foam
           1.2 %  egg-white-powder
          6.0 %  water
          disperse egg-white-powder in water
          whip    on medium until soft-peak
        stage first
          32.0 %  white-sugar
          18.8 %  glucose-syrup-42
          12.0 %  water
          cook    to 115 °C
        stage second
          12.0 %  white-sugar
          12.0 %  glucose-syrup-42
           6.0 %  water
          cook    to 111 °C
        stage body
          all of  foam
          all of  first
          all of  second
          stream  first into foam over 90 s
          stream  second into foam over 45 s
        """);
  }

  @Test
  void cooksFurther() {
    moistureOff.checkFix("Cook to 119 °C", """
        formula sweet
          batch   1000 g
          texture chewy
        stage pan
          40.00 % white-sugar
          35.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 106 °C
        """, """
        formula sweet
          batch   1000 g
          texture chewy
        stage pan
          40.00 % white-sugar
          35.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 119 °C
        """);
  }
}
