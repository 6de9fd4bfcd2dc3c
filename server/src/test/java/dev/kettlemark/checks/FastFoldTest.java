package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class FastFoldTest {

  private final RuleFixture fastFold = RuleFixture.of(new FastFold());

  @Test
  void marksMuchFoldedFast() {
    fastFold.check("""
        formula nut-foam
        stage foam
          60 %    egg-white-pasteurised
          whip    until stiff-peak
        stage body
          40 %    almond-flour
          all of  foam
          fold    almond-flour into foam while whisking on high
                                                           ^^^^ fast-fold: 40.0 % of the mass is folded in while the whisk runs on high
        """);
  }

  @Test
  void allowsALittle() {
    fastFold.check("""
        formula nut-foam
        stage foam
          60 %    egg-white-pasteurised
          whip    until stiff-peak
        stage body
          20 %    almond-flour
          all of  foam
          fold    almond-flour into foam while whisking on high
        """);
  }

  @Test
  void allowsASlowWhisk() {
    fastFold.check("""
        formula nut-foam
        stage foam
          60 %    egg-white-pasteurised
          whip    until stiff-peak
        stage body
          40 %    almond-flour
          all of  foam
          fold    almond-flour into foam while whisking on low
        """);
  }

  @Test
  void leavesAHotSyrupAlone() {
    fastFold.check("""
        formula meringue
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          30 %    egg-white-pasteurised
          all of  syrup
          whip    egg-white-pasteurised until soft-peak
          mix     syrup, egg-white-pasteurised while whisking on high
        """);
  }

  @Test
  void foldsOnLow() {
    fastFold.checkFix("Fold on low", """
        formula nut-foam
        stage foam
          60 %    egg-white-pasteurised
          whip    until stiff-peak
        stage body
          40 %    almond-flour
          all of  foam
          fold    almond-flour into foam while whisking on high
        """, """
        formula nut-foam
        stage foam
          60 %    egg-white-pasteurised
          whip    until stiff-peak
        stage body
          40 %    almond-flour
          all of  foam
          fold    almond-flour into foam while whisking on low
        """);
  }
}
