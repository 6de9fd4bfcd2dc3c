package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** Xanthan gum and locust bean gum gel together: Phillips and Williams (2009), from memory. */
class GumsThatGelTogetherTest {

  private final RuleFixture gumsThatGelTogether = RuleFixture.of(new GumsThatGelTogether());

  @Test
  void marksTheMistake() {
    gumsThatGelTogether.check("""
        formula two-gums
          percent of charge
          batch 1000 g
          texture soft
        stage sauce
          0.10 % locust-bean-gum
          0.05 % xanthan-gum
                 ^^^^^^^^^^^ gums-that-gel-together: `locust-bean-gum` and `xanthan-gum` gel together
          10.00 % caster-sugar
          q.s. raspberry-puree
          blend locust-bean-gum, xanthan-gum, caster-sugar
          sprinkle locust-bean-gum into raspberry-puree while whisking on low
          warm to 90 °C for 10 min until hydrated
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    gumsThatGelTogether.check("""
        formula two-gums
          percent of charge
          batch 1000 g
          texture gelled
        stage sauce
          0.10 % locust-bean-gum
          0.05 % xanthan-gum
          10.00 % caster-sugar
          q.s. raspberry-puree
          blend locust-bean-gum, xanthan-gum, caster-sugar
          sprinkle locust-bean-gum into raspberry-puree while whisking on low
          warm to 90 °C for 10 min until hydrated
        """);
  }

  @Test
  void leavesOneGumAlone() {
    gumsThatGelTogether.check("""
        formula two-gums
          percent of charge
          batch 1000 g
          texture soft
        stage sauce
          0.10 % locust-bean-gum
          10.00 % caster-sugar
          q.s. raspberry-puree
          blend locust-bean-gum, caster-sugar
          sprinkle locust-bean-gum into raspberry-puree while whisking on low
          warm to 90 °C for 10 min until hydrated
        """);
  }
}
