package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import org.junit.jupiter.api.Test;

/** High methoxyl pectin gels at pH 2.8 to 3.6: Phillips and Williams (2009), from memory. */
class AcidlessPectinTest {

  private final RuleFixture acidlessPectin = RuleFixture.of(new AcidlessPectin());

  @Test
  void marksTheMistake() {
    acidlessPectin.check("""
        formula fruit-jelly
          percent of charge
          batch 1000 g
          texture gelled
          caution hot-sugar
        stage base
          1.20 % pectin-hm-slow
                 ^^^^^^^^^^^^^^ acidless-pectin: `pectin-hm-slow` sets in acid, and nothing here is acid
          6.00 % caster-sugar
          34.00 % water
          blend pectin-hm-slow, caster-sugar
          sprinkle pectin-hm-slow into water while whisking on low
          boil for 2 min until hydrated
        stage body
          40.00 % white-sugar
          q.s. glucose-syrup-42
          all of base
          mix white-sugar, glucose-syrup-42, base
          cook to 107 °C
          deposit
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    acidlessPectin.check("""
        formula fruit-jelly
          percent of charge
          batch 1000 g
          texture gelled
          caution hot-sugar
        stage base
          1.20 % pectin-hm-slow
          6.00 % caster-sugar
          34.00 % water
          blend pectin-hm-slow, caster-sugar
          sprinkle pectin-hm-slow into water while whisking on low
          boil for 2 min until hydrated
        stage body
          40.00 % white-sugar
          q.s. glucose-syrup-42
          1.00 % citric-acid-solution-50
          all of base
          mix white-sugar, glucose-syrup-42, base
          cook to 107 °C
          mix citric-acid-solution-50
          deposit
        """);
  }

  @Test
  void takesABufferForNoAcid() {
    acidlessPectin.check("""
        formula fruit-jelly
          percent of charge
          batch 1000 g
          texture gelled
          caution hot-sugar
        stage base
          1.20 % pectin-hm-slow
                 ^^^^^^^^^^^^^^ acidless-pectin: `pectin-hm-slow` sets in acid, and nothing here is acid
          6.00 % caster-sugar
          0.20 % trisodium-citrate
          34.00 % water
          blend pectin-hm-slow, caster-sugar, trisodium-citrate
          sprinkle pectin-hm-slow into water while whisking on low
          boil for 2 min until hydrated
        stage body
          40.00 % white-sugar
          q.s. glucose-syrup-42
          all of base
          mix white-sugar, glucose-syrup-42, base
          cook to 107 °C
          deposit
        """);
  }

  @Test
  void isContentWithFruit() {
    acidlessPectin.check("""
        formula fruit-jelly
          percent of charge
          batch 1000 g
          texture gelled
          caution hot-sugar
        stage base
          1.20 % pectin-hm-slow
          6.00 % caster-sugar
          34.00 % raspberry-puree
          blend pectin-hm-slow, caster-sugar
          sprinkle pectin-hm-slow into raspberry-puree while whisking on low
          boil for 2 min until hydrated
        stage body
          40.00 % white-sugar
          q.s. glucose-syrup-42
          all of base
          mix white-sugar, glucose-syrup-42, base
          cook to 107 °C
          deposit
        """);
  }

  @Test
  void mendsIt() {
    acidlessPectin.checkFix("Add acid last", """
        formula fruit-jelly
          percent of charge
          batch 1000 g
          texture gelled
          caution hot-sugar
        stage base
          1.20 % pectin-hm-slow
          6.00 % caster-sugar
          34.00 % water
          blend pectin-hm-slow, caster-sugar
          sprinkle pectin-hm-slow into water while whisking on low
          boil for 2 min until hydrated
        stage body
          40.00 % white-sugar
          q.s. glucose-syrup-42
          all of base
          mix white-sugar, glucose-syrup-42, base
          cook to 107 °C
          deposit
        """, """
        formula fruit-jelly
          percent of charge
          batch 1000 g
          texture gelled
          caution hot-sugar
        stage base
          1.20 % pectin-hm-slow
          6.00 % caster-sugar
          34.00 % water
          blend pectin-hm-slow, caster-sugar
          sprinkle pectin-hm-slow into water while whisking on low
          boil for 2 min until hydrated
        stage body
          40.00 % white-sugar
          q.s. glucose-syrup-42
          all of base
          1.00 %              citric-acid-solution-50
          mix white-sugar, glucose-syrup-42, base
          cook to 107 °C
          mix       citric-acid-solution-50
          deposit
        """);
  }

  @Test
  void findsAJellyOfSweetFruitWithoutAcid() {
    assertEquals(
        Set.of("acidless-pectin"),
        SpoiltLibrary.graveRules(
            "raspberry-jelly",
            "34.00 % raspberry-puree",
            "34.00 % mango-puree",
            "warm raspberry-puree,",
            "warm mango-puree,",
            "into raspberry-puree,",
            "into mango-puree,",
            "1.00 % citric-acid-solution-50",
            "1.00 % invert-syrup",
            "mix citric-acid-solution-50,",
            "mix invert-syrup,"));
  }
}
