package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class ClaimNotTrueTest {

  private final RuleFixture claimNotTrue = RuleFixture.of(new ClaimNotTrue());

  @Test
  void namesWhatBreaksIt() {
    claimNotTrue.check("""
        formula nougat
          percent of charge
          claim vegan, nut-free
                ^^^^^ claim-not-true: `vegan` is not true: `honey` is not vegan; `egg-white-powder` is not vegan
                       ^^^^^^^^ claim-not-true: `nut-free` is not true: `almond-flour` holds almond
        stage bowl
          60 % honey
          10 % egg-white-powder
          30 % almond-flour
          mix
        """);
  }

  @Test
  void looksIntoSubFormulasAndCoats() {
    claimNotTrue.check("""
        formula inner
          percent of charge
        stage bowl
          90 % date-paste
          10 % gelatine-200
          mix
        product bite
          centre 8 g inner
          coat 30 % of finished couverture-milk-38
          claim vegetarian
                ^^^^^^^^^^ claim-not-true: `vegetarian` is not true: `gelatine-200` is not vegetarian
        """);
  }

  @Test
  void findsAddedSugar() {
    claimNotTrue.check("""
        formula mix
          percent of charge
          claim no-added-sugar
                ^^^^^^^^^^^^^^ claim-not-true: `no-added-sugar` is not true: `date-syrup` is added for its sugars
        stage bowl
          10 % date-syrup
          90 % oat-flake
          mix
        """);
  }

  /** By hand: 45 % against 50 % sucrose is 10 % less. */
  @Test
  void onlyWarnsWhereTheAmountIsEstimated() {
    claimNotTrue.checkSeverity(Severity.WARNING, """
        formula like
          percent of charge
        stage bowl
          50 % white-sugar
          50 % corn-starch
          mix
        formula light
          percent of charge
          claim less-sugar of like
        stage bowl
          45 % white-sugar
          55 % corn-starch
          mix
        """);
  }

  @Test
  void tellsTheMarketWhereTheyDiffer() {
    claimNotTrue.check("""
        formula like
          percent of charge
        stage bowl
          50 % white-sugar
          50 % potato-starch
          mix
        formula light
          percent of charge
          claim less-sugar of like
                ^^^^^^^^^^ claim-not-true: `less-sugar` is not true in the European Union: it has 28.0 % less sugar than `like`, and 30 % less is asked for
        stage bowl
          36 % white-sugar
          64 % potato-starch
          mix
        """);
  }

  @Test
  void staysQuietWhereItHolds() {
    claimNotTrue.check("""
        formula bar
          percent of charge
          claim vegan, no-added-sugar, nut-free
        stage bowl
          40 % apple-puree
          60 % oat-flake
          mix
        """);
  }

  @Test
  void takesOneWordBack() {
    claimNotTrue.checkFix("Remove `claim vegan`", """
        formula bar
          percent of charge
          claim vegan, vegetarian
        stage bowl
          100 % honey
          mix
        """, """
        formula bar
          percent of charge
          claim vegetarian
        stage bowl
          100 % honey
          mix
        """);
  }

  @Test
  void takesALineBack() {
    claimNotTrue.checkFix("Remove `claim vegan`", """
        formula bar
          percent of charge
          claim vegan
        stage bowl
          100 % honey
          mix
        """, """
        formula bar
          percent of charge
        stage bowl
          100 % honey
          mix
        """);
  }

  @Test
  void withdrawsInAVariantWhatItInherits() {
    claimNotTrue.checkFix("Withdraw `claim vegan`", """
        formula bar
          percent of charge
          claim vegan
        stage bowl
          100 % date-paste
          mix
        variant honey-bar of bar
          replace date-paste by 100 % honey
        """, """
        formula bar
          percent of charge
          claim vegan
        stage bowl
          100 % date-paste
          mix
        variant honey-bar of bar
          replace date-paste by 100 % honey
          withdraw claim vegan
        """);
  }
}
