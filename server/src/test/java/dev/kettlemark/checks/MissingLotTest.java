package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class MissingLotTest {

  private final RuleFixture missingLot = RuleFixture.of(new MissingLot());

  @Test
  void marksATrialWithoutTheLotOfItsFoam() {
    missingLot.check("""
        formula beaten-white
          percent   of charge
          batch     1000 g
        stage foam
          60 %      egg-white-pasteurised
          40 %      caster-sugar
          whip      on high until stiff-peak
        trial T-1 of beaten-white on 2026-03-02
              ^^^ missing-lot: no lot of `egg-white-pasteurised`, which makes the foam
        """);
  }

  @Test
  void staysQuietWithTheLot() {
    missingLot.check("""
        formula beaten-white
          percent   of charge
          batch     1000 g
        stage foam
          60 %      egg-white-pasteurised
          40 %      caster-sugar
          whip      on high until stiff-peak
        trial T-1 of beaten-white on 2026-03-02
          lot       egg-white-pasteurised "A-1"
        """);
  }

  @Test
  void leavesASugarAlone() {
    missingLot.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          percent   of charge
          batch     1000 g
        stage syrup
          80 %      white-sugar
          20 %      water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        trial T-1 of plain-syrup on 2026-03-02
        """);
  }

  @Test
  void leavesAnUnknownFormulaAlone() {
    missingLot.check("""
        trial T-1 of nothing-known on 2026-03-02
        """);
  }
}
