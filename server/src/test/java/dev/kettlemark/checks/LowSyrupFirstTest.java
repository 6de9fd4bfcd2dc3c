package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class LowSyrupFirstTest {

  private final RuleFixture lowSyrupFirst = RuleFixture.of(new LowSyrupFirst());

  @Test
  void marksALittleCoolSyrupThatGoesFirst() {
    lowSyrupFirst.check("""
        formula nougat
        stage foam
          20 %    egg-white-pasteurised
          whip    until soft-peak
        stage honey-syrup
          6 %     honey
          cook    to 120 °C
        stage sugar-syrup
          50 %    white-sugar
          18 %    water
          cook    to 140 °C
        stage body
          all of  foam
          all of  honey-syrup
          all of  sugar-syrup
          stream  honey-syrup into foam
                  ^^^^^^^^^^^ low-syrup-first: `honey-syrup` brings the foam to about 33–34 °C, below the 62 °C at which it sets; `sugar-syrup` is hotter
          stream  sugar-syrup into foam
        """);
  }

  @Test
  void leavesHoneyThatSetsTheFoamAlone() {
    lowSyrupFirst.check("""
        formula nougat
        stage foam
          20 %    egg-white-pasteurised
          whip    until soft-peak
        stage honey-syrup
          60 %     honey
          cook    to 120 °C
        stage sugar-syrup
          50 %    white-sugar
          18 %    water
          cook    to 140 °C
        stage body
          all of  foam
          all of  honey-syrup
          all of  sugar-syrup
          stream  honey-syrup into foam
          stream  sugar-syrup into foam
        """);
  }

  @Test
  void leavesTheHotterFirst() {
    lowSyrupFirst.check("""
        formula nougat
        stage foam
          20 %    egg-white-pasteurised
          whip    until soft-peak
        stage honey-syrup
          6 %     honey
          cook    to 120 °C
        stage sugar-syrup
          50 %    white-sugar
          18 %    water
          cook    to 110 °C
        stage body
          all of  foam
          all of  honey-syrup
          all of  sugar-syrup
          stream  honey-syrup into foam
          stream  sugar-syrup into foam
        """);
  }

  @Test
  void leavesAFoamThatHeatDoesNotSet() {
    lowSyrupFirst.check("""
        formula nougat
        stage foam
           1 %    soy-whipping-protein
          19 %    water
          whip    until soft-peak
        stage honey-syrup
          6 %     honey
          cook    to 120 °C
        stage sugar-syrup
          50 %    white-sugar
          18 %    water
          cook    to 140 °C
        stage body
          all of  foam
          all of  honey-syrup
          all of  sugar-syrup
          stream  honey-syrup into foam
          stream  sugar-syrup into foam
        """);
  }

  @Test
  void changesTheirOrder() {
    lowSyrupFirst.checkFix("Let `sugar-syrup` go first", """
        formula nougat
        stage foam
          20 %    egg-white-pasteurised
          whip    until soft-peak
        stage honey-syrup
          6 %     honey
          cook    to 120 °C
        stage sugar-syrup
          50 %    white-sugar
          18 %    water
          cook    to 140 °C
        stage body
          all of  foam
          all of  honey-syrup
          all of  sugar-syrup
          stream  honey-syrup into foam
          stream  sugar-syrup into foam
        """, """
        formula nougat
        stage foam
          20 %    egg-white-pasteurised
          whip    until soft-peak
        stage honey-syrup
          6 %     honey
          cook    to 120 °C
        stage sugar-syrup
          50 %    white-sugar
          18 %    water
          cook    to 140 °C
        stage body
          all of  foam
          all of  honey-syrup
          all of  sugar-syrup
          stream  sugar-syrup into foam
          stream  honey-syrup into foam
        """);
  }
}
