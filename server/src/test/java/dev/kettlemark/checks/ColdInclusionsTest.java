package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class ColdInclusionsTest {

  private final RuleFixture coldInclusions = RuleFixture.of(new ColdInclusions());

  @Test
  void marksColdNuts() {
    coldInclusions.check("""
        formula brittle
        stage pan
          50 %    white-sugar
          20 %    water
          cook    to 150 °C
        stage body
          30 %    roasted-almond
                  ^^^^^^^^^^^^^^ cold-inclusions: `roasted-almond` is cold, and takes the mass from 150 °C to about 95–104 °C
          all of  pan
          fold    roasted-almond into pan
        """);
  }

  @Test
  void isContentWithWarmOnes() {
    coldInclusions.check("""
        formula brittle
        stage pan
          50 %    white-sugar
          20 %    water
          cook    to 150 °C
        stage body
          30 %    roasted-almond  at 60 °C
          all of  pan
          fold    roasted-almond into pan
        """);
  }

  @Test
  void leavesAFewAlone() {
    coldInclusions.check("""
        formula brittle
        stage pan
          50 %    white-sugar
          20 %    water
          cook    to 150 °C
        stage body
          0.5 %    roasted-almond
          all of  pan
          fold    roasted-almond into pan
        """);
  }

  @Test
  void leavesAWarmMassAlone() {
    coldInclusions.check("""
        formula brittle
        stage pan
          50 %    white-sugar
          20 %    water
          warm    to 55 °C
        stage body
          30 %    roasted-almond
          all of  pan
          fold    roasted-almond into pan
        """);
  }

  @Test
  void warmsThem() {
    coldInclusions.checkFix("Warm to 60 °C", """
        formula brittle
        stage pan
          50 %    white-sugar
          20 %    water
          cook    to 150 °C
        stage body
          30 %    roasted-almond
          all of  pan
          fold    roasted-almond into pan
        """, """
        formula brittle
        stage pan
          50 %    white-sugar
          20 %    water
          cook    to 150 °C
        stage body
          30 %    roasted-almond  at 60 °C
          all of  pan
          fold    roasted-almond into pan
        """);
  }

  @Test
  void warmsThemMore() {
    coldInclusions.checkFix("Warm to 60 °C", """
        formula brittle
        stage pan
          50 %    white-sugar
          20 %    water
          cook    to 150 °C
        stage body
          30 %    roasted-almond  at 25 °C
          all of  pan
          fold    roasted-almond into pan
        """, """
        formula brittle
        stage pan
          50 %    white-sugar
          20 %    water
          cook    to 150 °C
        stage body
          30 %    roasted-almond  at 60 °C
          all of  pan
          fold    roasted-almond into pan
        """);
  }
}
