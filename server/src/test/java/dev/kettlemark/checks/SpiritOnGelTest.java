package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import org.junit.jupiter.api.Test;

/** What carrageenan stands of spirit: common practice, no source. Rum of 40 % by volume is 33.3 % by mass: ethanol table, from memory. */
class SpiritOnGelTest {

  private final RuleFixture spiritOnGel = RuleFixture.of(new SpiritOnGel());

  @Test
  void marksTheMistake() {
    spiritOnGel.check("""
        formula rum-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          0.80 % iota-carrageenan
                 ^^^^^^^^^^^^^^^^ spirit-on-gel: 16.8 % of the liquid around `iota-carrageenan` is spirit, and it stands 15 %
          20.00 % caster-sugar
          40.00 % rum
          q.s. water
          blend iota-carrageenan, caster-sugar
          sprinkle iota-carrageenan into water while whisking on low
          boil iota-carrageenan under lid for 3 min until hydrated
          cool iota-carrageenan to 80 °C
          mix rum
          deposit above 70 °C
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    spiritOnGel.check("""
        formula rum-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          0.80 % iota-carrageenan
          20.00 % caster-sugar
          10.00 % rum
          q.s. water
          blend iota-carrageenan, caster-sugar
          sprinkle iota-carrageenan into water while whisking on low
          boil iota-carrageenan under lid for 3 min until hydrated
          cool iota-carrageenan to 80 °C
          mix rum
          deposit above 70 °C
        """);
  }

  @Test
  void allowsALittleLess() {
    spiritOnGel.check("""
        formula rum-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          0.80 % iota-carrageenan
          20.00 % caster-sugar
          26.00 % rum
          q.s. water
          blend iota-carrageenan, caster-sugar
          sprinkle iota-carrageenan into water while whisking on low
          boil iota-carrageenan under lid for 3 min until hydrated
          cool iota-carrageenan to 80 °C
          mix rum
          deposit above 70 °C
        """);
  }

  @Test
  void letsACookDriveItOut() {
    spiritOnGel.check("""
        formula rum-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          0.80 % iota-carrageenan
          20.00 % caster-sugar
          40.00 % rum
          q.s. water
          blend iota-carrageenan, caster-sugar
          sprinkle iota-carrageenan into water while whisking on low
          cook to 104 °C
          cool iota-carrageenan to 80 °C
          deposit above 70 °C
        """);
  }

  @Test
  void mendsIt() {
    spiritOnGel.checkFix("Take 31 % of `rum`", """
        formula rum-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          0.80 % iota-carrageenan
          20.00 % caster-sugar
          40.00 % rum
          q.s. water
          blend iota-carrageenan, caster-sugar
          sprinkle iota-carrageenan into water while whisking on low
          boil iota-carrageenan under lid for 3 min until hydrated
          cool iota-carrageenan to 80 °C
          mix rum
          deposit above 70 °C
        """, """
        formula rum-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          0.80 % iota-carrageenan
          20.00 % caster-sugar
          31 % rum
          q.s. water
          blend iota-carrageenan, caster-sugar
          sprinkle iota-carrageenan into water while whisking on low
          boil iota-carrageenan under lid for 3 min until hydrated
          cool iota-carrageenan to 80 °C
          mix rum
          deposit above 70 °C
        """);
  }

  @Test
  void findsAMarshmallowWithRumOnACarrageenan() {
    assertEquals(
        Set.of("spirit-on-gel", "over-usual-dose", "lumping-gum", "deposit-below-setting"),
        SpoiltLibrary.graveRules(
            "gelatine-marshmallow",
            "1.80 % gelatine-250",
            "1.20 % iota-carrageenan",
            "sprinkle gelatine-250 into",
            "sprinkle iota-carrageenan into",
            "0.50 % vanilla-extract",
            "12.00 % rum",
            "mix vanilla-extract while",
            "mix rum while",
            "12.00 % water",
            "8.00 % water"));
  }
}
