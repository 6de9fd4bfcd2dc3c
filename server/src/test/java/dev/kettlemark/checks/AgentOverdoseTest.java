package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** Usual dose of xanthan gum 0.05–0.5 % of the liquid: Phillips and Williams (2009), from memory. */
class AgentOverdoseTest {

  private final RuleFixture agentOverdose = RuleFixture.of(new AgentOverdose());

  @Test
  void marksTheMistake() {
    agentOverdose.check("""
        formula thick-puree
          percent of charge
          batch 1000 g
          texture soft
          basis liquid = raspberry-puree
        stage puree
          4.00 % of liquid xanthan-gum
          ^^^^^^^^^^^^^^^^ agent-overdose: 4.00 % of liquid is 8 times the most that is usual of `xanthan-gum`
          20.00 % caster-sugar
          q.s. raspberry-puree
          blend xanthan-gum, caster-sugar
          sprinkle xanthan-gum into raspberry-puree while whisking on low
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    agentOverdose.check("""
        formula thick-puree
          percent of charge
          batch 1000 g
          texture soft
          basis liquid = raspberry-puree
        stage puree
          0.40 % of liquid xanthan-gum
          20.00 % caster-sugar
          q.s. raspberry-puree
          blend xanthan-gum, caster-sugar
          sprinkle xanthan-gum into raspberry-puree while whisking on low
        """);
  }

  @Test
  void allowsATouchAboveTheUsual() {
    agentOverdose.check("""
        formula thick-puree
          percent of charge
          batch 1000 g
          texture soft
          basis liquid = raspberry-puree
        stage puree
          0.60 % of liquid xanthan-gum
          20.00 % caster-sugar
          q.s. raspberry-puree
          blend xanthan-gum, caster-sugar
          sprinkle xanthan-gum into raspberry-puree while whisking on low
        """);
  }

  @Test
  void warnsBelowWhatCannotBeMeant() {
    agentOverdose.check("""
        formula thick-puree
          percent of charge
          batch 1000 g
          texture soft
          basis liquid = raspberry-puree
        stage puree
          1.00 % of liquid xanthan-gum
          ^^^^^^^^^^^^^^^^ agent-overdose: 1.00 % of liquid is 2 times the most that is usual of `xanthan-gum`
          20.00 % caster-sugar
          q.s. raspberry-puree
          blend xanthan-gum, caster-sugar
          sprinkle xanthan-gum into raspberry-puree while whisking on low
        """);
  }

  @Test
  void leavesAPartOfSomethingElseAlone() {
    agentOverdose.check("""
        formula foam-base
          percent of charge
          batch 1000 g
        stage base
          12.00 % egg-white-powder
          12.00 % caster-sugar
          q.s. water
          blend egg-white-powder, caster-sugar
          sprinkle egg-white-powder into water
        """);
  }

  @Test
  void leavesAGumOfChargeToItsOwnRule() {
    agentOverdose.check("""
        formula thick-puree
          percent of charge
          batch 1000 g
          texture soft
          basis liquid = raspberry-puree
        stage puree
          4.00 % xanthan-gum
          20.00 % caster-sugar
          q.s. raspberry-puree
          blend xanthan-gum, caster-sugar
          sprinkle xanthan-gum into raspberry-puree while whisking on low
        """);
  }

  @Test
  void cannotBeMeantAboveThreeTimesTheMost() {
    agentOverdose.checkSeverity(Severity.ERROR, """
        formula thick-puree
          percent of charge
          batch 1000 g
          texture soft
          basis liquid = raspberry-puree
        stage puree
          4.00 % of liquid xanthan-gum
          20.00 % caster-sugar
          q.s. raspberry-puree
          blend xanthan-gum, caster-sugar
          sprinkle xanthan-gum into raspberry-puree while whisking on low
        """);
  }

  @Test
  void doubtsBelowThat() {
    agentOverdose.checkSeverity(Severity.WARNING, """
        formula thick-puree
          percent of charge
          batch 1000 g
          texture soft
          basis liquid = raspberry-puree
        stage puree
          1.00 % of liquid xanthan-gum
          20.00 % caster-sugar
          q.s. raspberry-puree
          blend xanthan-gum, caster-sugar
          sprinkle xanthan-gum into raspberry-puree while whisking on low
        """);
  }

  @Test
  void mendsIt() {
    agentOverdose.checkFix("Take the most that is usual", """
        formula thick-puree
          percent of charge
          batch 1000 g
          texture soft
          basis liquid = raspberry-puree
        stage puree
          4.00 % of liquid xanthan-gum
          20.00 % caster-sugar
          q.s. raspberry-puree
          blend xanthan-gum, caster-sugar
          sprinkle xanthan-gum into raspberry-puree while whisking on low
        """, """
        formula thick-puree
          percent of charge
          batch 1000 g
          texture soft
          basis liquid = raspberry-puree
        stage puree
          0.5 % of liquid xanthan-gum
          20.00 % caster-sugar
          q.s. raspberry-puree
          blend xanthan-gum, caster-sugar
          sprinkle xanthan-gum into raspberry-puree while whisking on low
        """);
  }
}
