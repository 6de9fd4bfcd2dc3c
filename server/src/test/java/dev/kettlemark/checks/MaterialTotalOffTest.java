package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class MaterialTotalOffTest {

  private final RuleFixture materialTotalOff = RuleFixture.of(new MaterialTotalOff());

  @Test
  void marksWhatIsOff() {
    materialTotalOff.check("""
        formula mix
        stage pan
          45.00 % icing-sugar
          53.00 % caster-sugar
        formula paste
        stage pan
          70 % mix
               ^^^ material-total-off: the lines of `mix` add up to 98.00 %
          30 % water
        """);
  }

  @Test
  void isContentWithAWhole() {
    materialTotalOff.check("""
        formula mix
        stage pan
          45.00 % icing-sugar
          55.00 % caster-sugar
        formula paste
        stage pan
          70 % mix
          30 % water
        """);
  }

  @Test
  void overlooksRounding() {
    materialTotalOff.check("""
        formula mix
        stage pan
          45.00 % icing-sugar
          54.96 % caster-sugar
        formula paste
        stage pan
          70 % mix
          30 % water
        """);
  }
}
