package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** High methoxyl pectin gels above 55 to 60 % soluble solids: Phillips and Williams (2009), from memory. */
class ThinPectinMassTest {

  private final RuleFixture thinPectinMass = RuleFixture.of(new ThinPectinMass());

  @Test
  void marksTheMistake() {
    thinPectinMass.check("""
        formula light-jelly
          percent of charge
          batch 1000 g
          texture gelled
        stage base
          1.20 % pectin-hm-slow
                 ^^^^^^^^^^^^^^ thin-pectin-mass: `pectin-hm-slow` sets above 55 % soluble solids, and the mass has 26.3 %
          6.00 % caster-sugar
          20.00 % white-sugar
          1.00 % lemon-juice
          q.s. water
          blend pectin-hm-slow, caster-sugar
          sprinkle pectin-hm-slow into water while whisking on low
          boil pectin-hm-slow under lid for 2 min until hydrated
          mix white-sugar
          mix lemon-juice
          deposit
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    thinPectinMass.check("""
        formula light-jelly
          percent of charge
          batch 1000 g
          texture gelled
        stage base
          1.20 % pectin-nh
          6.00 % caster-sugar
          20.00 % white-sugar
          1.00 % lemon-juice
          q.s. water
          blend pectin-nh, caster-sugar
          sprinkle pectin-nh into water while whisking on low
          boil pectin-nh under lid for 2 min until hydrated
          mix white-sugar
          mix lemon-juice
          deposit
        """);
  }

  @Test
  void isContentAboveTheLimit() {
    thinPectinMass.check("""
        formula light-jelly
          percent of charge
          batch 1000 g
          texture gelled
        stage base
          1.20 % pectin-hm-slow
          6.00 % caster-sugar
          55.00 % white-sugar
          1.00 % lemon-juice
          q.s. water
          blend pectin-hm-slow, caster-sugar
          sprinkle pectin-hm-slow into water while whisking on low
          boil pectin-hm-slow under lid for 2 min until hydrated
          mix white-sugar
          mix lemon-juice
          deposit
        """);
  }

  @Test
  void mendsIt() {
    thinPectinMass.checkFix("Take `pectin-nh` instead", """
        formula light-jelly
          percent of charge
          batch 1000 g
          texture gelled
        stage base
          1.20 % pectin-hm-slow
          6.00 % caster-sugar
          20.00 % white-sugar
          1.00 % lemon-juice
          q.s. water
          blend pectin-hm-slow, caster-sugar
          sprinkle pectin-hm-slow into water while whisking on low
          boil pectin-hm-slow under lid for 2 min until hydrated
          mix white-sugar
          mix lemon-juice
          deposit
        """, """
        formula light-jelly
          percent of charge
          batch 1000 g
          texture gelled
        stage base
          1.20 % pectin-nh
          6.00 % caster-sugar
          20.00 % white-sugar
          1.00 % lemon-juice
          q.s. water
          blend pectin-nh, caster-sugar
          sprinkle pectin-nh into water while whisking on low
          boil pectin-nh under lid for 2 min until hydrated
          mix white-sugar
          mix lemon-juice
          deposit
        """);
  }
}
