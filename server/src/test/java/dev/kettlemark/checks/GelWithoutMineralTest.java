package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** Low methoxyl pectin gels with calcium: Phillips and Williams (2009), from memory. */
class GelWithoutMineralTest {

  private final RuleFixture gelWithoutMineral = RuleFixture.of(new GelWithoutMineral());

  @Test
  void marksTheMistake() {
    gelWithoutMineral.check("""
        formula soft-fruit-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          1.00 % pectin-lm
                 ^^^^^^^^^ gel-without-mineral: `pectin-lm` gels with calcium, and nothing brings any
          20.00 % caster-sugar
          q.s. raspberry-puree
          blend pectin-lm, caster-sugar
          sprinkle pectin-lm into raspberry-puree while whisking on low
          boil under lid for 3 min until hydrated
          deposit above 80 °C
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    gelWithoutMineral.check("""
        formula soft-fruit-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          1.00 % pectin-lm
          20.00 % caster-sugar
          0.15 % calcium-lactate
          q.s. raspberry-puree
          blend pectin-lm, caster-sugar
          sprinkle pectin-lm into raspberry-puree while whisking on low
          boil pectin-lm under lid for 3 min until hydrated
          mix calcium-lactate
          deposit above 80 °C
        """);
  }

  @Test
  void isContentWithMilk() {
    gelWithoutMineral.check("""
        formula soft-fruit-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          1.00 % pectin-lm
          20.00 % condensed-milk
          q.s. raspberry-puree
          mix pectin-lm, condensed-milk
          sprinkle pectin-lm into raspberry-puree while whisking on low
          boil under lid for 3 min until hydrated
          deposit above 80 °C
        """);
  }

  @Test
  void saysNothingOfUnknownMaterials() {
    gelWithoutMineral.check("""
        formula soft-fruit-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          1.00 % pectin-lm
          20.00 % caster-sugar
          q.s. grandmas-puree
          blend pectin-lm, caster-sugar
          sprinkle pectin-lm into grandmas-puree while whisking on low
          boil under lid for 3 min until hydrated
          deposit above 80 °C
        """);
  }

  @Test
  void mendsIt() {
    gelWithoutMineral.checkFix(
        "Weigh in `calcium-lactate`, once the agent has taken up its water", """
        formula soft-fruit-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          1.00 % pectin-lm
          20.00 % caster-sugar
          q.s. raspberry-puree
          blend pectin-lm, caster-sugar
          sprinkle pectin-lm into raspberry-puree while whisking on low
          boil under lid for 3 min until hydrated
          deposit above 80 °C
        """, """
        formula soft-fruit-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          1.00 % pectin-lm
          20.00 % caster-sugar
          q.s. raspberry-puree
          0.10 %              calcium-lactate
          blend pectin-lm, caster-sugar
          sprinkle pectin-lm into raspberry-puree while whisking on low
          boil under lid for 3 min until hydrated
          deposit above 80 °C
          mix       calcium-lactate
        """);
  }
}
