package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** Gelatine is soaked in cold water first: common practice, no source. */
class UnsoakedAgentTest {

  private final RuleFixture unsoakedAgent = RuleFixture.of(new UnsoakedAgent());

  @Test
  void marksTheMistake() {
    unsoakedAgent.check("""
        formula wine-jelly
          percent of charge
          batch 1000 g
          texture gelled
        stage jelly
          2.00 % gelatine-200
                 ^^^^^^^^^^^^ unsoaked-agent: `gelatine-200` meets 58–59 °C before it is soaked
          20.00 % caster-sugar
          q.s. water
          warm water, caster-sugar to 60 °C
          sprinkle gelatine-200 into water while whisking on low
          warm to 60 °C for 5 min until dissolved
          deposit
          set for 12 h at 4-6 °C
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    unsoakedAgent.check("""
        formula wine-jelly
          percent of charge
          batch 1000 g
          texture gelled
        stage soak
          2.00 % gelatine-200
          10.00 % water
          sprinkle gelatine-200 into water
          soak for 10 min until bloomed
        stage jelly
          20.00 % caster-sugar
          q.s. water
          all of soak
          warm water, caster-sugar to 60 °C
          mix soak
          warm to 60 °C for 5 min until dissolved
          deposit
          set for 12 h at 4-6 °C
        """);
  }

  @Test
  void isContentWithAStand() {
    unsoakedAgent.check("""
        formula wine-jelly
          percent of charge
          batch 1000 g
          texture gelled
        stage jelly
          2.00 % gelatine-200
          20.00 % caster-sugar
          q.s. water
          sprinkle gelatine-200 into water while whisking on low
          stand for 15 min
          warm to 60 °C for 5 min until dissolved
          deposit
          set for 12 h at 4-6 °C
        """);
  }

  @Test
  void mendsIt() {
    unsoakedAgent.checkFix("Soak `gelatine-200` in `water` first", """
        formula wine-jelly
          percent of charge
          batch 1000 g
          texture gelled
        stage jelly
          2.00 % gelatine-200
          20.00 % caster-sugar
          q.s. water
          warm water, caster-sugar to 60 °C
          sprinkle gelatine-200 into water while whisking on low
          warm to 60 °C for 5 min until dissolved
          deposit
          set for 12 h at 4-6 °C
        """, """
        formula wine-jelly
          percent of charge
          batch 1000 g
          texture gelled
        stage jelly
          2.00 % gelatine-200
          20.00 % caster-sugar
          q.s. water
          soak      gelatine-200 in water for 10 min until bloomed
          warm water, caster-sugar to 60 °C
          sprinkle gelatine-200 into water while whisking on low
          warm to 60 °C for 5 min until dissolved
          deposit
          set for 12 h at 4-6 °C
        """);
  }
}
