package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class BoiledAromaTest {

  private final RuleFixture boiledAroma = RuleFixture.of(new BoiledAroma());

  @Test
  void marksFlowerWaterInACook() {
    boiledAroma.check("""
        formula caramel
        stage pan
          60 %    white-sugar
          20 %    water
          2 %     rose-water
                  ^^^^^^^^^^ boiled-aroma: `rose-water` goes through `cook` in `pan`
          cook    to 125 °C
        stage body
          all of  pan
          deposit pan
        """);
  }

  @Test
  void marksAnOpenBoil() {
    boiledAroma.check("""
        formula caramel
        stage pan
          60 %    white-sugar
          20 %    water
          2 %     rum
                  ^^^ boiled-aroma: `rum` goes through `boil` in `pan`
          boil    for 2 min
        stage body
          all of  pan
          deposit pan
        """);
  }

  @Test
  void trustsALid() {
    boiledAroma.check("""
        formula caramel
        stage pan
          60 %    white-sugar
          20 %    water
          2 %     rose-water
          boil    under lid for 2 min
        stage body
          all of  pan
          deposit pan
        """);
  }

  @Test
  void leavesAPodAlone() {
    boiledAroma.check("""
        formula caramel
        stage pan
          60 %    white-sugar
          20 %    water
          2 %     vanilla-pod
          cook    to 125 °C
        stage body
          all of  pan
          deposit pan
        """);
  }

  @Test
  void leavesASyrupBesideItAlone() {
    boiledAroma.check("""
        formula caramel
        stage pan
          60 %    white-sugar
          20 %    water
          2 %     rose-water
          cook    white-sugar, water to 125 °C
        stage body
          all of  pan
          deposit pan
        """);
  }

  @Test
  void addsItLater() {
    boiledAroma.checkFix("Add it in `body` instead", """
        formula caramel
        stage pan
          60 %    white-sugar
          20 %    water
          2 %     rose-water
          cook    to 125 °C
        stage body
          all of  pan
          deposit pan
        """, """
        formula caramel
        stage pan
          60 %    white-sugar
          20 %    water
          cook    to 125 °C
        stage body
          2 %     rose-water
          all of  pan
          mix       rose-water into pan
          deposit pan
        """);
  }

  @Test
  void makesAStageForIt() {
    boiledAroma.checkFix("Add it at the end, in a stage of its own", """
        formula caramel
        stage pan
          60 %    white-sugar
          20 %    water
          2 %     rose-water
          mix     white-sugar, water, rose-water
          cook    to 125 °C
        """, """
        formula caramel
        stage pan
          60 %    white-sugar
          20 %    water
          mix     white-sugar, water
          cook    to 125 °C

        stage finish
          2 %     rose-water
          all of              pan
          mix       rose-water into pan
        """);
  }
}
