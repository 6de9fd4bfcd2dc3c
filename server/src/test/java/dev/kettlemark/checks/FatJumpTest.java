package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class FatJumpTest {

  private final RuleFixture fatJump = RuleFixture.of(new FatJump());

  /** By hand: 40 % of almonds with 54 % fat against 40 % of oats with 6.52 %. */
  @Test
  void marksAnOilyReplacement() {
    fatJump.check("""
        formula oat-bite
          batch   1000 g
        stage dough
          60 %    date-paste
          40 %    oat-flake
          mix     date-paste
          fold    oat-flake

        variant other-bite of oat-bite
          replace oat-flake by 40 % almond-paste
                                    ^^^^^^^^^^^^ fat-jump: `almond-paste` brings 22.2 % of the finished mass as fat, and `oat-flake` brought 2.6 %
        """);
  }

  @Test
  void allowsALeanOne() {
    fatJump.check("""
        formula oat-bite
          batch   1000 g
        stage dough
          60 %    date-paste
          40 %    oat-flake
          mix     date-paste
          fold    oat-flake

        variant other-bite of oat-bite
          replace oat-flake by 40 % rice-crisp
        """);
  }

  @Test
  void allowsALittleOfIt() {
    fatJump.check("""
        formula oat-bite
          batch   1000 g
        stage dough
          60 %    date-paste
          40 %    oat-flake
          mix     date-paste
          fold    oat-flake

        variant other-bite of oat-bite
          replace oat-flake by  8 % almond-paste
        """);
  }
}
