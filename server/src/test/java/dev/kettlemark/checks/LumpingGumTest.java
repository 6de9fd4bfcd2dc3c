package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class LumpingGumTest {

  private final RuleFixture lumpingGum = RuleFixture.of(new LumpingGum());

  @Test
  void marksAGumThatIsSprinkledAlone() {
    lumpingGum.check("""
        formula syrup
        stage pot
          60 %   caster-sugar
          0.2 %  xanthan-gum
          39 %   water
          sprinkle xanthan-gum into water
                   ^^^^^^^^^^^ lumping-gum: `xanthan-gum` meets water with 0 parts of dry carrier to one of it; it needs 5
          mix    caster-sugar, water
        """);
  }

  @Test
  void marksTooLittleSugar() {
    lumpingGum.check("""
        formula syrup
        stage pot
          0.9 %  caster-sugar
          0.2 %  xanthan-gum
          40 %   water
          blend  xanthan-gum, caster-sugar
          sprinkle xanthan-gum into water
                   ^^^^^^^^^^^ lumping-gum: `xanthan-gum` meets water with 4.5 parts of dry carrier to one of it; it needs 5
        """);
  }

  @Test
  void isContentWithTheSugarAskedFor() {
    lumpingGum.check("""
        formula syrup
        stage pot
          1.0 %  caster-sugar
          0.2 %  xanthan-gum
          40 %   water
          blend  xanthan-gum, caster-sugar
          sprinkle xanthan-gum into water
        """);
  }

  @Test
  void asksLessForWhatIsBoiledLater() {
    lumpingGum.check("""
        formula jelly
        stage pot
          2 %    caster-sugar
          1 %    pectin-hm-slow
          90 %   water
          blend  pectin-hm-slow, caster-sugar
          sprinkle pectin-hm-slow into water
        """);
  }

  @Test
  void marksWhatIsBoiledLaterWithTooLittle() {
    lumpingGum.check("""
        formula jelly
        stage pot
          1.9 %  caster-sugar
          1 %    pectin-hm-slow
          90 %   water
          blend  pectin-hm-slow, caster-sugar
          sprinkle pectin-hm-slow into water
                   ^^^^^^^^^^^^^^ lumping-gum: `pectin-hm-slow` meets water with 1.9 parts of dry carrier to one of it; it needs 2
        """);
  }

  @Test
  void takesGlycerolAsACarrier() {
    lumpingGum.check("""
        formula syrup
        stage pot
          2 %    glycerol
          0.2 %  xanthan-gum
          90 %   water
          disperse xanthan-gum in glycerol
          pour   glycerol into water
        """);
  }

  @Test
  void trustsAFastWhisk() {
    lumpingGum.check("""
        formula syrup
        stage pot
          0.2 %  xanthan-gum
          90 %   water
          sprinkle xanthan-gum into water while whisking on high
        """);
  }

  @Test
  void leavesAgentsThatNeedNoSugarAlone() {
    lumpingGum.check("""
        formula jelly
        stage pot
          1 %    agar
          90 %   water
          sprinkle agar into water
        """);
  }

  @Test
  void blendsItFirst() {
    lumpingGum.checkFix("Blend it with `caster-sugar` first", """
        formula syrup
        stage pot
          60 %   caster-sugar
          0.2 %  xanthan-gum
          39 %   water
          sprinkle xanthan-gum into water
        """, """
        formula syrup
        stage pot
          60 %   caster-sugar
          0.2 %  xanthan-gum
          39 %   water
          blend     xanthan-gum, caster-sugar until lump-free
          sprinkle xanthan-gum into water
        """);
  }

  @Test
  void offersNothingWithoutADrySugar() {
    lumpingGum.checkNoFix("""
        formula syrup
        stage pot
          60 %   glucose-syrup-42
          0.2 %  xanthan-gum
          39 %   water
          sprinkle xanthan-gum into water
        """);
  }

  @Test
  void trustsABlender() {
    lumpingGum.check("""
        formula syrup
        stage pot
          0.2 %  xanthan-gum
          90 %   water
          disperse xanthan-gum in water while blending
        """);
  }
}
