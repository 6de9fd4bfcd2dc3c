package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import org.junit.jupiter.api.Test;

/** Enzyme-modified soya protein does not set with heat: common practice, no source. */
class UnsetFoamTest {

  private final RuleFixture unsetFoam = RuleFixture.of(new UnsetFoam());

  @Test
  void marksTheMistake() {
    unsetFoam.check("""
        formula dried-drops
          percent of charge
          batch 1000 g
          texture brittle
        stage foam
          1.50 % soy-whipping-protein
                 ^^^^^^^^^^^^^^^^^^^^ unset-foam: `soy-whipping-protein` does not set with heat, and nothing else here sets
          60.00 % caster-sugar
          q.s. water
          disperse soy-whipping-protein in water
          stand for 20 min until hydrated
          whip soy-whipping-protein on high until soft-peak
          sprinkle caster-sugar into soy-whipping-protein while whisking on high
          whip on high until stiff-peak
        stage drops
          all of foam
          pipe foam
          dry for 3 h at 80-90 °C until dry
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    unsetFoam.check("""
        formula dried-drops
          percent of charge
          batch 1000 g
          texture brittle
        stage foam
          1.50 % soy-whipping-protein
          60.00 % caster-sugar
          0.30 % of water xanthan-gum
          q.s. water
          disperse soy-whipping-protein in water
          stand for 20 min until hydrated
          blend xanthan-gum, caster-sugar
          whip soy-whipping-protein on high until soft-peak
          sprinkle caster-sugar into soy-whipping-protein while whisking on high
          whip on high until stiff-peak
        stage drops
          all of foam
          pipe foam
          dry for 3 h at 80-90 °C until dry
        """);
  }

  @Test
  void isContentWithEggWhite() {
    unsetFoam.check("""
        formula dried-drops
          percent of charge
          batch 1000 g
          texture brittle
        stage foam
          1.50 % egg-white-powder
          60.00 % caster-sugar
          q.s. water
          disperse egg-white-powder in water
          stand for 20 min until hydrated
          whip egg-white-powder on high until soft-peak
          sprinkle caster-sugar into egg-white-powder while whisking on high
          whip on high until stiff-peak
        stage drops
          all of foam
          pipe foam
          dry for 3 h at 80-90 °C until dry
        """);
  }

  @Test
  void leavesAFoamThatIsNotShapedAlone() {
    unsetFoam.check("""
        formula dried-drops
          percent of charge
          batch 1000 g
          texture brittle
        stage foam
          1.50 % soy-whipping-protein
          60.00 % caster-sugar
          q.s. water
          disperse soy-whipping-protein in water
          stand for 20 min until hydrated
          whip soy-whipping-protein on high until soft-peak
          sprinkle caster-sugar into soy-whipping-protein while whisking on high
          whip on high until stiff-peak
        stage drops
          all of foam
          rest for 3 h
        """);
  }

  @Test
  void mendsIt() {
    unsetFoam.checkFix("Thicken its liquid with 0.30 % of `xanthan-gum`", """
        formula dried-drops
          percent of charge
          batch 1000 g
          texture brittle
        stage foam
          1.50 % soy-whipping-protein
          60.00 % caster-sugar
          q.s. water
          disperse soy-whipping-protein in water
          stand for 20 min until hydrated
          whip soy-whipping-protein on high until soft-peak
          sprinkle caster-sugar into soy-whipping-protein while whisking on high
          whip on high until stiff-peak
        stage drops
          all of foam
          pipe foam
          dry for 3 h at 80-90 °C until dry
        """, """
        formula dried-drops
          percent of charge
          batch 1000 g
          texture brittle
        stage foam
          1.50 % soy-whipping-protein
          60.00 % caster-sugar
          q.s. water
          0.30 % of water     xanthan-gum
          blend     xanthan-gum, caster-sugar
          disperse soy-whipping-protein in water
          stand for 20 min until hydrated
          whip soy-whipping-protein on high until soft-peak
          sprinkle caster-sugar into soy-whipping-protein while whisking on high
          whip on high until stiff-peak
        stage drops
          all of foam
          pipe foam
          dry for 3 h at 80-90 °C until dry
        """);
  }

  @Test
  void findsADriedMeringueOfAPlantProtein() {
    assertEquals(
        Set.of("unset-foam"),
        SpoiltLibrary.graveRules(
            "italian-meringue",
            "28.00 % egg-white-pasteurised",
            "1.50 % soy-whipping-protein",
            "1.50 % soy-whipping-protein",
            "+ 26.50 % water",
            "whip egg-white-pasteurised on",
            "whip soy-whipping-protein, water on",
            "into egg-white-pasteurised over",
            "into soy-whipping-protein over",
            "on medium for 6 min until stiff-peak",
            "+ dry for 3 h at 85 °C",
            "on medium for 6 min until stiff-peak",
            "+ pipe"));
  }
}
