package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class WrongTemperTest {

  private final RuleFixture wrongTemper = RuleFixture.of(new WrongTemper());

  @Test
  void marksMilkTemperedLikeDark() {
    wrongTemper.check("""
        formula shell
          batch   1000 g
        stage coat
          100 %   couverture-milk-38
          temper  couverture-milk-38 to 32.5 °C
                                        ^^^^^^^ wrong-temper: `couverture-milk-38` is tempered at 29–30.5 °C, not at 32.5 °C
        """);
  }

  @Test
  void allowsItsOwnRange() {
    wrongTemper.check("""
        formula shell
          batch   1000 g
        stage coat
          100 %   couverture-milk-38
          temper  couverture-milk-38 to 29-30 °C
        """);
  }

  @Test
  void allowsDarkItsOwn() {
    wrongTemper.check("""
        formula shell
          batch   1000 g
        stage coat
          100 %   couverture-dark-62
          temper  to 32 °C
        """);
  }

  @Test
  void saysNothingOfACoatThatIsSilent() {
    wrongTemper.check("""
        formula shell
          batch   1000 g
        stage coat
          100 %   cocoa-butter
          temper  to 20 °C
        """);
  }

  @Test
  void tempersInRange() {
    wrongTemper.checkFix("Temper to 29–30.5 °C", """
        formula shell
          batch   1000 g
        stage coat
          100 %   couverture-milk-38
          temper  couverture-milk-38 to 32.5 °C
        """, """
        formula shell
          batch   1000 g
        stage coat
          100 %   couverture-milk-38
          temper  couverture-milk-38 to 29–30.5 °C
        """);
  }
}
