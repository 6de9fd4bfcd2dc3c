package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class PasteurisedSaidOfRawTest {

  private final RuleFixture pasteurisedSaidOfRaw = RuleFixture.of(new PasteurisedSaidOfRaw());

  @Test
  void findsTheWordInANote() {
    pasteurisedSaidOfRaw.check("""
        formula foam
          percent of charge
          note "Pasteurized white of the day."
               ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ pasteurised-said-of-raw: `egg-white` is raw, and here it is called pasteurised
        stage bowl
          100 % egg-white
          mix
        """);
  }

  @Test
  void findsTheWordOnAnIngredient() {
    pasteurisedSaidOfRaw.check("""
        ingredient farm-white "Farm egg white, pasteurised"
        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ pasteurised-said-of-raw: `farm-white` is raw, and here it is called pasteurised
          traits raw-animal
        """);
  }

  @Test
  void staysQuietWhereItIsTrueOrDenied() {
    pasteurisedSaidOfRaw.check("""
        formula foam "Foam of pasteurised white"
          percent of charge
        stage bowl
          100 % egg-white-pasteurised
          mix
        formula raw-foam
          percent of charge
          note "Raw, not pasteurised."
        stage bowl
          100 % egg-white
          mix
        """);
  }
}
