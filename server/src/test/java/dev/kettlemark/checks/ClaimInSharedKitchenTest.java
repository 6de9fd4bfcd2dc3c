package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class ClaimInSharedKitchenTest {

  private final RuleFixture sharedKitchen = RuleFixture.of(new ClaimInSharedKitchen());

  @Test
  void findsANutFreeBarInANutKitchen() {
    sharedKitchen.check("""
        house loft "Nut loft"
          allergens-on-site almond, milk
        formula bar
          percent of charge
          claim nut-free, vegan
                ^^^^^^^^ claim-in-shared-kitchen: `nut-free` is not safe in Nut loft: the house handles almond
        stage bowl
          100 % oat-flake
          mix
        """);
  }

  @Test
  void staysQuietWhereItIsContainedAnywayOrNotOnSite() {
    sharedKitchen.check("""
        house loft
          allergens-on-site almond
        formula bar
          percent of charge
          claim nut-free
        stage bowl
          100 % almond
          mix
        formula plain
          percent of charge
          claim egg-free
        stage bowl
          100 % oat-flake
          mix
        """);
  }
}
