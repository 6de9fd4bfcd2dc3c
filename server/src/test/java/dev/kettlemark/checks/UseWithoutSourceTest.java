package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class UseWithoutSourceTest {

  private final RuleFixture useWithoutSource = RuleFixture.of(new UseWithoutSource());

  @Test
  void marksADoseThatNobodySays() {
    useWithoutSource.check("""
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
          use       2-20 % of charge
          ^^^^^^^^^^^^^^^^^^^^^^^^^^ use-without-source: the usual dose of `lime-honey`, 2-20 % of charge, names no source
        """);
  }

  @Test
  void staysQuietWithASource() {
    useWithoutSource.check("""
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
          use       2-20 % of charge  from "common practice, no source"
        """);
  }

  @Test
  void saysThatThereIsNone() {
    useWithoutSource.checkFix("Write `from \"common practice, no source\"`", """
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
          use       2-20 % of charge
        """, """
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
          use       2-20 % of charge  from "common practice, no source"
        """);
  }
}
