package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class SplitBasisMemberTest {

  private static final String SAUCE = """
      formula sauce
        basis liquid = %s, raspberry-puree
      stage syrup
        24.00 %% white-sugar
        8.00 %% water
      stage sauce
        0.40 %% of liquid guar-gum
        40.00 %% raspberry-puree
        20.00 %% water
      """;

  private final RuleFixture splitBasisMember = RuleFixture.of(new SplitBasisMember());

  @Test
  void marksAMemberOfTwoStages() {
    splitBasisMember.check("""
        formula sauce
          basis liquid = water, raspberry-puree
                         ^^^^^ split-basis-member: `water` of the basis `liquid` stands in `syrup` and in `sauce`
        stage syrup
          24.00 % white-sugar
          8.00 % water
        stage sauce
          0.40 % of liquid guar-gum
          40.00 % raspberry-puree
          20.00 % water
        """);
  }

  @Test
  void staysQuietAboutAPlacedMemberAndAStage() {
    splitBasisMember.check(SAUCE.formatted("water in sauce"));
    splitBasisMember.check(SAUCE.formatted("sauce"));
  }

  @Test
  void staysQuietAboutTwoLinesOfOneStage() {
    splitBasisMember.check("""
        formula sauce
          basis liquid = water
        stage sauce
          0.40 % of liquid guar-gum
          20.00 % water
          10.00 % water at 60 °C
        """);
  }

  @Test
  void marksAVariantThatAddsTheMemberToAnotherStage() {
    splitBasisMember.check("""
        formula sauce
          basis liquid = water
        stage syrup
          24.00 % white-sugar
        stage sauce
          0.40 % of liquid guar-gum
          20.00 % water
        variant sauce-two of sauce
                             ^^^^^ split-basis-member: `water` of the basis `liquid` stands in `syrup` and in `sauce`
          add 8.00 % water in syrup
        """);
  }

  @Test
  void placesItFirstWhereTheBasisIsUsed() {
    splitBasisMember.checkFirstFix(
        "Write `water in sauce`", SAUCE.formatted("water"), SAUCE.formatted("water in sauce"));
    splitBasisMember.checkFix(
        "Write `water in syrup`", SAUCE.formatted("water"), SAUCE.formatted("water in syrup"));
  }

  @Test
  void countsAllWhereThatIsMeant() {
    splitBasisMember.checkFix(
        "Write `water in sauce, water in syrup`",
        SAUCE.formatted("water"),
        SAUCE.formatted("water in sauce, water in syrup"));
  }
}
