package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** Usual doses: Phillips and Williams (2009), from memory; middle of 0.3–2.0 % is 1.15 %, of 0.2–1.5 % is 0.85 %. */
class GellingAgentsTogetherTest {

  private final RuleFixture gellingAgentsTogether = RuleFixture.of(new GellingAgentsTogether());

  @Test
  void marksTheMistake() {
    gellingAgentsTogether.check("""
        formula double-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          1.20 % agar
                 ^^^^ gelling-agents-together: `agar` and `iota-carrageenan` together are 2 times a usual dose
          0.80 % iota-carrageenan
          10.00 % caster-sugar
          q.s. water
          blend agar, iota-carrageenan, caster-sugar
          sprinkle agar into water while whisking on low
          boil under lid for 3 min until hydrated
          deposit above 70 °C
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    gellingAgentsTogether.check("""
        formula double-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          0.60 % agar
          0.40 % iota-carrageenan
          10.00 % caster-sugar
          q.s. water
          blend agar, iota-carrageenan, caster-sugar
          sprinkle agar into water while whisking on low
          boil under lid for 3 min until hydrated
          deposit above 70 °C
        """);
  }

  @Test
  void allowsAHalfOfEach() {
    gellingAgentsTogether.check("""
        formula double-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          0.80 % agar
          0.50 % iota-carrageenan
          10.00 % caster-sugar
          q.s. water
          blend agar, iota-carrageenan, caster-sugar
          sprinkle agar into water while whisking on low
          boil under lid for 3 min until hydrated
          deposit above 70 °C
        """);
  }

  @Test
  void mendsIt() {
    gellingAgentsTogether.checkFix("Take half of each", """
        formula double-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          1.20 % agar
          0.80 % iota-carrageenan
          10.00 % caster-sugar
          q.s. water
          blend agar, iota-carrageenan, caster-sugar
          sprinkle agar into water while whisking on low
          boil under lid for 3 min until hydrated
          deposit above 70 °C
        """, """
        formula double-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          0.6 % agar
          0.4 % iota-carrageenan
          10.00 % caster-sugar
          q.s. water
          blend agar, iota-carrageenan, caster-sugar
          sprinkle agar into water while whisking on low
          boil under lid for 3 min until hydrated
          deposit above 70 °C
        """);
  }
}
