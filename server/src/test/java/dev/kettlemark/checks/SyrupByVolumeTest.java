package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class SyrupByVolumeTest {

  private final RuleFixture syrupByVolume = RuleFixture.of(new SyrupByVolume());

  /** Density of honey 1.433 g/mL: USDA SR26, food 19296. */
  @Test
  void marksAHeavySyrup() {
    syrupByVolume.check("""
        formula glaze
        stage pan
          100 mL honey
          ^^^^^^ syrup-by-volume: 100 mL of `honey` weighs 143.3 g, not 100.0 g
          100 g  white-sugar
        """);
  }

  @Test
  void leavesWhatWeighsLikeWater() {
    syrupByVolume.check("""
        formula glaze
        stage pan
          100 mL water
          100 mL milk
          100 g  white-sugar
        """);
  }

  @Test
  void leavesPercentagesToTheirRule() {
    syrupByVolume.check("""
        formula glaze
          batch 1000 g
        stage pan
          100 mL honey
          q.s.   water
        """);
  }

  @Test
  void weighs() {
    syrupByVolume.checkFix("Weigh `143.3 g`", """
        formula glaze
        stage pan
          100 mL honey
        """, """
        formula glaze
        stage pan
          143.3 g honey
        """);
  }
}
