package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class UntemperedCoatTest {

  private final RuleFixture untemperedCoat = RuleFixture.of(new UntemperedCoat());

  @Test
  void marksACouvertureThatNobodyTempered() {
    untemperedCoat.check("""
        formula sticks
        stage centre
          60 %    glucose-syrup-42
          rest    for 2 h
        stage sticks
          30 %    couverture-milk-38
          all of  centre
          enrobe  centre with couverture-milk-38
          ^^^^^^ untempered-coat: `couverture-milk-38` is used as a coat and was never tempered
        """);
  }

  @Test
  void isContentWithATemperedOne() {
    untemperedCoat.check("""
        formula sticks
        stage centre
          60 %    glucose-syrup-42
          rest    for 2 h
        stage sticks
          30 %    couverture-milk-38
          all of  centre
          temper  couverture-milk-38 to 29.5 °C
          enrobe  centre with couverture-milk-38
        """);
  }

  @Test
  void isContentWithACoatTemperedTogether() {
    untemperedCoat.check("""
        formula sticks
        stage coat
          20 %    couverture-dark-62
          10 %    cocoa-butter
          warm    to 45 °C
          temper  to 31.5 °C
        stage centre
          60 %    glucose-syrup-42
          rest    for 2 h
        stage sticks
          all of  coat
          all of  centre
          enrobe  centre with coat
        """);
  }

  @Test
  void leavesOtherFatsAlone() {
    untemperedCoat.check("""
        formula sticks
        stage centre
          60 %    glucose-syrup-42
          rest    for 2 h
        stage sticks
          30 %    coconut-oil
          all of  centre
          enrobe  centre with coconut-oil
        """);
  }

  @Test
  void leavesACentreWithALittleCocoaAlone() {
    untemperedCoat.check("""
        formula sticks
        stage centre
          60 %    glucose-syrup-42
          10 %    couverture-dark-62
          mix     all
        stage sticks
          30 %    coconut-oil
          all of  centre
          enrobe  centre with coconut-oil
        """);
  }

  @Test
  void tempersIt() {
    untemperedCoat.checkFix("Temper it to 29.5 °C first", """
        formula sticks
        stage centre
          60 %    glucose-syrup-42
          rest    for 2 h
        stage sticks
          30 %    couverture-milk-38
          all of  centre
          enrobe  centre with couverture-milk-38
        """, """
        formula sticks
        stage centre
          60 %    glucose-syrup-42
          rest    for 2 h
        stage sticks
          30 %    couverture-milk-38
          all of  centre
          temper    couverture-milk-38 to 29.5 °C
          enrobe  centre with couverture-milk-38
        """);
  }

  @Test
  void tempersADarkOneWarmer() {
    untemperedCoat.checkFix("Temper it to 31.5 °C first", """
        formula sticks
        stage centre
          60 %    glucose-syrup-42
          rest    for 2 h
        stage sticks
          30 %    couverture-dark-62
          all of  centre
          enrobe  centre with couverture-dark-62
        """, """
        formula sticks
        stage centre
          60 %    glucose-syrup-42
          rest    for 2 h
        stage sticks
          30 %    couverture-dark-62
          all of  centre
          temper    couverture-dark-62 to 31.5 °C
          enrobe  centre with couverture-dark-62
        """);
  }
}
