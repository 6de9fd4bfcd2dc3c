package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class UnknownStateTest {

  private final RuleFixture unknownState = RuleFixture.of(new UnknownState());

  @Test
  void marksAStateThatNobodyCanTell() {
    unknownState.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until ready
                                              ^^^^^ unknown-state: `ready` is no state
          cook      to 118 °C ± 1
        """);
  }

  @Test
  void mendsMarksAStateThatNobodyCanTell() {
    unknownState.checkFirstFix("Write `dissolved`", """
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until ready
          cook      to 118 °C ± 1
        """, """
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        """);
  }

  @Test
  void proposesWhatIsNear() {
    unknownState.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until disolved
                                              ^^^^^^^^ unknown-state: `disolved` is no state
          cook      to 118 °C ± 1
        """);
  }

  @Test
  void mendsProposesWhatIsNear() {
    unknownState.checkFirstFix("Write `dissolved`", """
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until disolved
          cook      to 118 °C ± 1
        """, """
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        """);
  }

  @Test
  void proposesPeaksForAFoam() {
    unknownState.check("""
        formula egg-meringue
          percent   of charge
          batch     1000 g
        stage foam
          30.00 %   egg-white-pasteurised
          70.00 %   caster-sugar
          whip      on medium until fluffy
                                    ^^^^^^ unknown-state: `fluffy` is no state
        """);
  }

  @Test
  void mendsProposesPeaksForAFoam() {
    unknownState.checkFirstFix("Write `soft-peak`", """
        formula egg-meringue
          percent   of charge
          batch     1000 g
        stage foam
          30.00 %   egg-white-pasteurised
          70.00 %   caster-sugar
          whip      on medium until fluffy
        """, """
        formula egg-meringue
          percent   of charge
          batch     1000 g
        stage foam
          30.00 %   egg-white-pasteurised
          70.00 %   caster-sugar
          whip      on medium until soft-peak
        """);
  }

  @Test
  void knowsStatesSugarStagesAndLaterSteps() {
    unknownState.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      until soft-ball
          keep      whisking until deposit
          keep      stirring until slab
        stage slab
          all of    syrup
          set       for 2 h until set
        """);
  }
}
