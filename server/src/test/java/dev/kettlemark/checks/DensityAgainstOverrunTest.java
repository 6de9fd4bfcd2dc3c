package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** By definition of overrun: 0.30 g/mL against 1.20 g/mL without air are 300 %. */
class DensityAgainstOverrunTest {

  private final RuleFixture densityAgainstOverrun = RuleFixture.of(new DensityAgainstOverrun());

  @Test
  void marksAnOverrunThatTheDensityDenies() {
    densityAgainstOverrun.check("""
        formula beaten-white
          percent   of charge
          batch     1000 g
        stage foam
          60 %      egg-white-pasteurised
          40 %      caster-sugar
          whip      on high until stiff-peak
        trial T-1 of beaten-white on 2026-03-02
          measured  0.30 g/mL density of foam
          measured  90 %    overrun of foam
                    ^^^^ density-against-overrun: an overrun of 90 %, but 0.30 g/mL of `foam` are an overrun of 300 %
        """);
  }

  @Test
  void staysQuietWithinFifteenPoints() {
    densityAgainstOverrun.check("""
        formula beaten-white
          percent   of charge
          batch     1000 g
        stage foam
          60 %      egg-white-pasteurised
          40 %      caster-sugar
          whip      on high until stiff-peak
        trial T-1 of beaten-white on 2026-03-02
          measured  0.30 g/mL density of foam
          measured  295 %   overrun of foam
        """);
  }

  @Test
  void needsBoth() {
    densityAgainstOverrun.check("""
        formula beaten-white
          percent   of charge
          batch     1000 g
        stage foam
          60 %      egg-white-pasteurised
          40 %      caster-sugar
          whip      on high until stiff-peak
        trial T-1 of beaten-white on 2026-03-02
          measured  90 %    overrun of foam
        """);
  }

  @Test
  void writesTheComputedOverrun() {
    densityAgainstOverrun.checkFix("Write the computed overrun, 300 %", """
        formula beaten-white
          percent   of charge
          batch     1000 g
        stage foam
          60 %      egg-white-pasteurised
          40 %      caster-sugar
          whip      on high until stiff-peak
        trial T-1 of beaten-white on 2026-03-02
          measured  0.30 g/mL density of foam
          measured  90 %    overrun of foam
        """, """
        formula beaten-white
          percent   of charge
          batch     1000 g
        stage foam
          60 %      egg-white-pasteurised
          40 %      caster-sugar
          whip      on high until stiff-peak
        trial T-1 of beaten-white on 2026-03-02
          measured  0.30 g/mL density of foam
          measured  300 %    overrun of foam
        """);
  }
}
