package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** Agar dissolves in boiling water only: Phillips and Williams (2009), from memory. */
class UnboiledAgentTest {

  private final RuleFixture unboiledAgent = RuleFixture.of(new UnboiledAgent());

  @Test
  void marksTheMistake() {
    unboiledAgent.check("""
        formula agar-marshmallow
          percent of charge
          batch 1000 g
          texture soft
          caution hot-sugar
        stage gel
          1.00 % agar
                 ^^^^ unboiled-agent: `agar` is never boiled; the mass around it comes to 81–87 °C
          q.s. water
          sprinkle agar into water while whisking on low
          stand for 10 min
        stage syrup
          40.00 % white-sugar
          30.00 % glucose-syrup-42
          12.00 % water
          boil under lid for 3 min until dissolved
          cook to 115 °C
        stage body
          all of gel
          all of syrup
          pour syrup into gel while whisking on low
          mix for 5 min
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    unboiledAgent.check("""
        formula agar-marshmallow
          percent of charge
          batch 1000 g
          texture soft
          caution hot-sugar
        stage gel
          1.00 % agar
          q.s. water
          sprinkle agar into water while whisking on low
          boil under lid for 2 min until hydrated
        stage syrup
          40.00 % white-sugar
          30.00 % glucose-syrup-42
          12.00 % water
          boil under lid for 3 min until dissolved
          cook to 115 °C
        stage body
          all of gel
          all of syrup
          pour syrup into gel while whisking on low
          mix for 5 min
        """);
  }

  @Test
  void countsAStepThatSaysItIsBoilingHot() {
    unboiledAgent.check("""
        formula agar-marshmallow
          percent of charge
          batch 1000 g
          texture soft
          caution hot-sugar
        stage gel
          1.00 % agar
          q.s. water
          sprinkle agar into water while whisking on low
          hold at 98 °C for 3 min
        stage syrup
          40.00 % white-sugar
          30.00 % glucose-syrup-42
          12.00 % water
          boil under lid for 3 min until dissolved
          cook to 115 °C
        stage body
          all of gel
          all of syrup
          pour syrup into gel while whisking on low
          mix for 5 min
        """);
  }

  @Test
  void leavesAPartOfSomethingElseAlone() {
    unboiledAgent.check("""
        formula agar-marshmallow
          percent of charge
          batch 1000 g
          caution hot-sugar
        stage gel
          1.00 % agar
          q.s. water
          sprinkle agar into water while whisking on low
          stand for 10 min
        stage syrup
          40.00 % white-sugar
          30.00 % glucose-syrup-42
          12.00 % water
          boil under lid for 3 min until dissolved
          cook to 115 °C
        stage body
          all of gel
          all of syrup
          pour syrup into gel while whisking on low
          mix for 5 min
        """);
  }

  @Test
  void mendsIt() {
    unboiledAgent.checkFix("Boil `agar` in its water", """
        formula agar-marshmallow
          percent of charge
          batch 1000 g
          texture soft
          caution hot-sugar
        stage gel
          1.00 % agar
          q.s. water
          sprinkle agar into water while whisking on low
          stand for 10 min
        stage syrup
          40.00 % white-sugar
          30.00 % glucose-syrup-42
          12.00 % water
          boil under lid for 3 min until dissolved
          cook to 115 °C
        stage body
          all of gel
          all of syrup
          pour syrup into gel while whisking on low
          mix for 5 min
        """, """
        formula agar-marshmallow
          percent of charge
          batch 1000 g
          texture soft
          caution hot-sugar
        stage gel
          1.00 % agar
          q.s. water
          sprinkle agar into water while whisking on low
          boil      agar under lid for 2 min until hydrated
          stand for 10 min
        stage syrup
          40.00 % white-sugar
          30.00 % glucose-syrup-42
          12.00 % water
          boil under lid for 3 min until dissolved
          cook to 115 °C
        stage body
          all of gel
          all of syrup
          pour syrup into gel while whisking on low
          mix for 5 min
        """);
  }
}
