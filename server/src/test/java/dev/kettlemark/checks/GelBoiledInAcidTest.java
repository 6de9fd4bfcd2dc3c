package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import org.junit.jupiter.api.Test;

/** Hot acid weakens agar: Phillips and Williams (2009), from memory. */
class GelBoiledInAcidTest {

  private final RuleFixture gelBoiledInAcid = RuleFixture.of(new GelBoiledInAcid());

  @Test
  void marksTheMistake() {
    gelBoiledInAcid.check("""
        formula lemon-jelly
          percent of charge
          batch 1000 g
          texture gelled
          caution hot-sugar
        stage gel
          1.00 % agar
          q.s. water
          sprinkle agar into water while whisking on low
          boil under lid for 2 min until hydrated
        stage body
          30.00 % white-sugar
          20.00 % glucose-syrup-42
          8.00 % lemon-juice
                 ^^^^^^^^^^^ gel-boiled-in-acid: `lemon-juice` boils with `agar`, and the mass holds 0.51 % acid
          all of gel
          mix white-sugar, glucose-syrup-42, lemon-juice, gel
          cook to 106 °C
          cool to 70 °C
          deposit
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    gelBoiledInAcid.check("""
        formula lemon-jelly
          percent of charge
          batch 1000 g
          texture gelled
          caution hot-sugar
        stage gel
          1.00 % agar
          q.s. water
          sprinkle agar into water while whisking on low
          boil under lid for 2 min until hydrated
        stage body
          30.00 % white-sugar
          20.00 % glucose-syrup-42
          8.00 % lemon-juice
          all of gel
          mix white-sugar, glucose-syrup-42, gel
          cook white-sugar to 106 °C
          cool white-sugar to 80 °C
          mix lemon-juice
          deposit above 50 °C
        """);
  }

  @Test
  void allowsAPinchOfAcid() {
    gelBoiledInAcid.check("""
        formula lemon-jelly
          percent of charge
          batch 1000 g
          texture gelled
          caution hot-sugar
        stage gel
          1.00 % agar
          q.s. water
          sprinkle agar into water while whisking on low
          boil under lid for 2 min until hydrated
        stage body
          30.00 % white-sugar
          20.00 % glucose-syrup-42
          2.00 % lemon-juice
          all of gel
          mix white-sugar, glucose-syrup-42, lemon-juice, gel
          cook to 106 °C
          cool to 70 °C
          deposit
        """);
  }

  @Test
  void findsAJellyThatIsCookedOnWithItsAcid() {
    assertEquals(
        Set.of("gel-boiled-in-acid"),
        SpoiltLibrary.graveRules(
            "raspberry-jelly",
            "1.20 % pectin-hm-slow",
            "1.20 % pectin-nh",
            "blend pectin-hm-slow,",
            "blend pectin-nh,",
            "sprinkle pectin-hm-slow into",
            "sprinkle pectin-nh into",
            "cook to 108 °C ± 1",
            "cook to 106 °C",
            "mix citric-acid-solution-50, cooked",
            "+ cook to 108 °C"));
  }
}
