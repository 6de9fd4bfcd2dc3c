package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import org.junit.jupiter.api.Test;

class CentreOffTemperatureTest {

  private final RuleFixture centreOffTemperature = RuleFixture.of(new CentreOffTemperature());

  @Test
  void marksAColdCentre() {
    centreOffTemperature.check("""
        formula sticks
        stage centre
          60 %    glucose-syrup-42
          rest    for 2 h at 4-6 °C
        stage sticks
          30 %    couverture-dark-62
          all of  centre
          temper  couverture-dark-62 to 31.5 °C
          enrobe  centre with couverture-dark-62
          ^^^^^^ centre-off-temperature: `centre` has about 4–6 °C when it is coated; usual is 18–26 °C
        """);
  }

  @Test
  void marksAWarmCentre() {
    centreOffTemperature.check("""
        formula sticks
        stage centre
          60 %    glucose-syrup-42
          rest    for 2 h at 30 °C
        stage sticks
          30 %    couverture-dark-62
          all of  centre
          temper  couverture-dark-62 to 31.5 °C
          enrobe  centre with couverture-dark-62
          ^^^^^^ centre-off-temperature: `centre` has about 30 °C when it is coated; usual is 18–26 °C
        """);
  }

  @Test
  void allowsBothEnds() {
    centreOffTemperature.check("""
        formula sticks
        stage centre
          60 %    glucose-syrup-42
          rest    for 2 h at 18 °C
        stage sticks
          30 %    couverture-dark-62
          all of  centre
          temper  couverture-dark-62 to 31.5 °C
          enrobe  centre with couverture-dark-62
        """);
  }

  @Test
  void takesALowTemperatureForTheCentres() {
    centreOffTemperature.check("""
        formula sticks
        stage centre
          60 %    glucose-syrup-42
          rest    for 2 h at 20 °C
        stage sticks
          30 %    couverture-dark-62
          all of  centre
          temper  couverture-dark-62 to 31.5 °C
          enrobe  centre with couverture-dark-62 at 6 °C
                                                    ^^^^ centre-off-temperature: the centre is coated at 6 °C; usual is 18–26 °C
        """);
  }

  @Test
  void takesAHighTemperatureForTheCoats() {
    centreOffTemperature.check("""
        formula sticks
        stage centre
          60 %    glucose-syrup-42
          rest    for 2 h at 20 °C
        stage sticks
          30 %    couverture-dark-62
          all of  centre
          temper  couverture-dark-62 to 31.5 °C
          enrobe  centre with couverture-dark-62 at 31-32 °C
        """);
  }

  @Test
  void believesATemperatureWithinTheRange() {
    centreOffTemperature.check("""
        formula sticks
        stage centre
          60 %    glucose-syrup-42
          rest    for 2 h at 4-6 °C
        stage sticks
          30 %    couverture-dark-62
          all of  centre
          temper  couverture-dark-62 to 31.5 °C
          enrobe  centre with couverture-dark-62 at 20-24 °C
        """);
  }

  @Test
  void leavesTheRoomAsItIs() {
    centreOffTemperature.check("""
        house cool
          room    at 14-18 °C
        formula sticks
        stage centre
          60 %    glucose-syrup-42
          rest    for 2 h
        stage sticks
          30 %    couverture-dark-62
          all of  centre
          temper  couverture-dark-62 to 31.5 °C
          enrobe  centre with couverture-dark-62
        """);
  }

  @Test
  void letsItRest() {
    centreOffTemperature.checkFix("Let it rest at 20-24 °C first", """
        formula sticks
        stage centre
          60 %    glucose-syrup-42
          rest    for 2 h at 4-6 °C
        stage sticks
          30 %    couverture-dark-62
          all of  centre
          temper  couverture-dark-62 to 31.5 °C
          enrobe  centre with couverture-dark-62
        """, """
        formula sticks
        stage centre
          60 %    glucose-syrup-42
          rest    for 2 h at 4-6 °C
        stage sticks
          30 %    couverture-dark-62
          all of  centre
          temper  couverture-dark-62 to 31.5 °C
          rest      centre for 2 h at 20-24 °C
          enrobe  centre with couverture-dark-62
        """);
  }

  @Test
  void coatsItWarmer() {
    centreOffTemperature.checkFix("Coat it at 20-24 °C", """
        formula sticks
        stage centre
          60 %    glucose-syrup-42
          rest    for 2 h at 20 °C
        stage sticks
          30 %    couverture-dark-62
          all of  centre
          temper  couverture-dark-62 to 31.5 °C
          enrobe  centre with couverture-dark-62 at 6 °C
        """, """
        formula sticks
        stage centre
          60 %    glucose-syrup-42
          rest    for 2 h at 20 °C
        stage sticks
          30 %    couverture-dark-62
          all of  centre
          temper  couverture-dark-62 to 31.5 °C
          enrobe  centre with couverture-dark-62 at 20-24 °C
        """);
  }

  @Test
  void saysNothingOfAWaitWithoutATime() {
    centreOffTemperature.check("""
        formula sticks
        stage centre
          60 %    glucose-syrup-42
          cook    to 110 °C
          set     at 18 °C
        stage sticks
          30 %    couverture-dark-62
          all of  centre
          temper  couverture-dark-62 to 31.5 °C
          enrobe  centre with couverture-dark-62
        """);
  }

  @Test
  void findsABarThatIsCoatedCold() {
    assertEquals(
        Set.of("centre-off-temperature"),
        SpoiltLibrary.graveRules(
            "orchard-bar",
            "36.00 % date-paste",
            "26.00 % date-paste",
            "stage slab",
            "+ 10.00 % couverture-dark-62",
            "rest for 10 h at 16-20 °C",
            "rest dough for 10 h at 4-6 °C",
            "cut 100 x 23 mm",
            "+ enrobe dough with couverture-dark-62",
            "cut 100 x 23 mm",
            "+ temper couverture-dark-62 to 31.5 °C"));
  }
}
