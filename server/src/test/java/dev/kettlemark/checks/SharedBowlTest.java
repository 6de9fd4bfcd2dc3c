package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class SharedBowlTest {

  private final RuleFixture sharedBowl = RuleFixture.of(new SharedBowl());

  private static final String EGG = """
      formula egg-foam
        percent of charge
      stage foam in planetary-5
        100 % egg-white-pasteurised
        mix
      """;

  @Test
  void findsTheBowlOfAnEggFoam() {
    sharedBowl.check(EGG + """
        formula plant-foam
          percent of charge
          claim egg-free, vegan
                ^^^^^^^^ shared-bowl: `egg-free`, and `egg-foam` brings egg into `planetary-5` too
        stage foam in planetary-5
          100 % aquafaba
          mix
        """);
  }

  @Test
  void staysQuietInABowlOfItsOwn() {
    sharedBowl.check(EGG + """
        formula plant-foam
          percent of charge
          claim egg-free
        stage foam in planetary-3
          100 % aquafaba
          mix
        formula milk-foam
          percent of charge
          claim milk-free
        stage foam in planetary-5
          100 % aquafaba
          mix
        """);
  }
}
