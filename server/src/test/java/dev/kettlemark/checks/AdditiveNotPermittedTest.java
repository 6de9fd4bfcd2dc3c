package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class AdditiveNotPermittedTest {

  private final RuleFixture additive = RuleFixture.of(new AdditiveNotPermitted());

  private static final String JELLY = """
      formula jelly
        percent of charge
        texture gelled
      stage pan
        99 % apple-puree
        1 % konjac-gum
        mix
      """;

  @Test
  void findsKonjacInAJelly() {
    additive.check("house pier\n  market EU\n"
        + JELLY.replace(
            "konjac-gum\n",
            "konjac-gum\n"
                + "      ^^^^^^^^^^ additive-not-permitted: `konjac-gum` in the European Union: konjac (E 425)"
                + " is not permitted in jelly confectionery\n"));
    additive.checkSeverity(Severity.ERROR, "house pier\n  market EU\n" + JELLY);
  }

  @Test
  void isOnlyWorthKnowingWhereNoMarketIsNamed() {
    additive.checkSeverity(Severity.INFORMATION, JELLY);
  }

  @Test
  void staysQuietInAnotherMarketAndInAnotherFood() {
    additive.check("house pier\n  market US\n" + JELLY);
    additive.check("house pier\n  market EU\n" + JELLY.replace("gelled", "chewy"));
  }

  @Test
  void findsTitaniumDioxideByItsNumberInAnyFood() {
    additive.check("""
        house pier
          market EU
        ingredient bright-white
          label "colour (E171)"
        formula coat
          percent of charge
        stage pan
          99 % icing-sugar
          1 % bright-white
              ^^^^^^^^^^^^ additive-not-permitted: `bright-white` in the European Union: titanium dioxide (E 171) is permitted in no food
          mix
        """);
  }

  @Test
  void findsAGumInAMiniCup() {
    additive.checkSeverity(Severity.ERROR, """
        house pier
          market EU
        formula little "Apple jelly mini-cups"
          percent of charge
        stage pan
          99 % apple-puree
          1 % kappa-carrageenan
          mix
        """);
  }
}
