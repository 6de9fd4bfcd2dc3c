package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** Pea protein falls out about pH 4.5: common practice, no source. */
class AcidityNotStoodTest {

  private final RuleFixture acidityNotStood = RuleFixture.of(new AcidityNotStood());

  @Test
  void marksTheMistake() {
    acidityNotStood.check("""
        formula sour-whip
          percent of charge
          batch 1000 g
          texture soft
          expect acidity 3.4-3.6 pH
                         ^^^^^^^^^^ acidity-not-stood: `pea-protein-isolate` stands pH 5.5 to 9, not 3.4-3.6 pH
        stage foam
          2.00 % pea-protein-isolate
          30.00 % caster-sugar
          2.00 % citric-acid-solution-50
          q.s. water
          disperse pea-protein-isolate in water
          stand for 30 min until hydrated
          whip on high until soft-peak
          mix caster-sugar, citric-acid-solution-50
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    acidityNotStood.check("""
        formula sour-whip
          percent of charge
          batch 1000 g
          texture soft
          expect acidity 6.3-6.8 pH
        stage foam
          2.00 % pea-protein-isolate
          30.00 % caster-sugar
          q.s. water
          disperse pea-protein-isolate in water
          stand for 30 min until hydrated
          whip on high until soft-peak
          mix caster-sugar
        """);
  }

  @Test
  void isContentWhereTheRangesMeet() {
    acidityNotStood.check("""
        formula sour-whip
          percent of charge
          batch 1000 g
          texture soft
          expect acidity 5.0-5.6 pH
        stage foam
          2.00 % pea-protein-isolate
          30.00 % caster-sugar
          2.00 % citric-acid-solution-50
          q.s. water
          disperse pea-protein-isolate in water
          stand for 30 min until hydrated
          whip on high until soft-peak
          mix caster-sugar, citric-acid-solution-50
        """);
  }

  @Test
  void looksAtAPhThatAStepChecks() {
    acidityNotStood.check("""
        formula sour-whip
          percent of charge
          batch 1000 g
          texture soft
        stage foam
          2.00 % pea-protein-isolate
          30.00 % caster-sugar
          2.00 % citric-acid-solution-50
          q.s. water
          disperse pea-protein-isolate in water
          stand for 30 min until hydrated
          whip on high until soft-peak
          mix caster-sugar, citric-acid-solution-50
          check 4.5 pH
                ^^^^^^ acidity-not-stood: `pea-protein-isolate` stands pH 5.5 to 9, not 4.5 pH
        """);
  }
}
