package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class ClaimNotKnownTest {

  private final RuleFixture claimNotKnown = RuleFixture.of(new ClaimNotKnown());

  @Test
  void findsAnUnknownGluten() {
    claimNotKnown.check("""
        formula chew
          percent of charge
          claim gluten-free
                ^^^^^^^^^^^ claim-not-known: `gluten-free` cannot be known: the gluten of `brown-rice-syrup` is not known
        stage bowl
          100 % brown-rice-syrup
          mix
        """);
  }

  @Test
  void findsASilentIngredient() {
    claimNotKnown.check("""
        ingredient moon-dust
          contains 100 % sucrose
        formula chew
          percent of charge
          claim vegan, egg-free
                ^^^^^ claim-not-known: `vegan` cannot be known: nobody has stated whether `moon-dust` is vegan
                       ^^^^^^^^ claim-not-known: `egg-free` cannot be known: nobody has stated the allergens of `moon-dust`
        stage bowl
          100 % moon-dust
          mix
        """);
  }

  @Test
  void staysQuietWhereItIsBrokenAnyway() {
    claimNotKnown.check("""
        formula chew
          percent of charge
          claim vegan
        stage bowl
          50 % honey
          50 % moon-dust
          mix
        """);
  }

  @Test
  void isOnlyWorthKnowingWhereOthersDecide() {
    claimNotKnown.checkSeverity(Severity.INFORMATION, """
        formula chew
          percent of charge
          claim kosher
        stage bowl
          100 % date-paste
          mix
        """);
  }
}
