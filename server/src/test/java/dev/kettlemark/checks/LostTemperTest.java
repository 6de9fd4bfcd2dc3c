package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class LostTemperTest {

  private final RuleFixture lostTemper = RuleFixture.of(new LostTemper());

  @Test
  void marksACoatThatIsHeldTooWarm() {
    lostTemper.check("""
        formula shell
          batch   1000 g
        stage coat
          100 %   couverture-dark-62
          temper  to 31.5 °C
          hold    at 38 °C
                     ^^^^^ lost-temper: the coat was tempered, and 38 °C melts its crystals
        """);
  }

  @Test
  void marksACoatThatIsUsedTooWarm() {
    lostTemper.check("""
        formula shell
          batch   1000 g
        stage coat
          60 %    couverture-dark-62
          40 %    roasted-almond
          temper  couverture-dark-62 to 31.5 °C
          enrobe  roasted-almond with couverture-dark-62 at 38 °C
                                                            ^^^^^ lost-temper: the coat was tempered, and 38 °C melts its crystals
        """);
  }

  @Test
  void marksWhatIsHotGoingIn() {
    lostTemper.check("""
        formula shell
          batch   1000 g
        stage coat
          40 %    couverture-dark-62
          60 %    roasted-almond    at 90 °C
          temper  couverture-dark-62 to 31.5 °C
          fold    roasted-almond into couverture-dark-62
          ^^^^ lost-temper: the coat was tempered, and 66–68 °C melts its crystals
        """);
  }

  @Test
  void staysQuietUpToTheLimit() {
    lostTemper.check("""
        formula shell
          batch   1000 g
        stage coat
          100 %   couverture-dark-62
          temper  to 31.5 °C
          hold    at 33-34 °C
          enrobe  at 32 °C
        """);
  }

  @Test
  void allowsTemperingAnew() {
    lostTemper.check("""
        formula shell
          batch   1000 g
        stage coat
          100 %   couverture-dark-62
          temper  to 31.5 °C
          temper  to 31.5 °C
        """);
  }

  @Test
  void keepsItInTemper() {
    lostTemper.checkFix("Write `31–32 °C`", """
        formula shell
          batch   1000 g
        stage coat
          100 %   couverture-dark-62
          temper  to 31.5 °C
          hold    at 38 °C
        """, """
        formula shell
          batch   1000 g
        stage coat
          100 %   couverture-dark-62
          temper  to 31.5 °C
          hold    at 31–32 °C
        """);
  }
}
