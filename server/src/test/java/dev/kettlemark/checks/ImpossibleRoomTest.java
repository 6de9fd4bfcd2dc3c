package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class ImpossibleRoomTest {

  private final RuleFixture impossibleRoom = RuleFixture.of(new ImpossibleRoom());

  @Test
  void marksARoomInTheOtherScale() {
    impossibleRoom.check("""
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          set     for 12 h at 20 °F
                              ^^^^^ impossible-room: a room at 20 °F, which is -6.7 °C
        """);
  }

  @Test
  void looksAtHousesAndProducts() {
    impossibleRoom.check("""
        house cold
          room    at 20 °F
                     ^^^^^ impossible-room: a room at 20 °F, which is -6.7 °C
        product bonbon
          centre  10 g syrup
          shelf   3 months at 65 °C
                              ^^^^^ impossible-room: a room at 65 °C, which is 149 °F
        """);
  }

  @Test
  void allowsRoomsStoresAndFreezers() {
    impossibleRoom.check("""
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          rest    for 12 h at 4 °C
          set     for 12 h at -18 °C
          set     for 12 h at 68 °F
          set     for 1 h at 40-50 °C
        """);
  }

  @Test
  void isAWarningWhereItMayBeAnOven() {
    impossibleRoom.checkSeverity(Severity.WARNING, """
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          set     for 12 h at 120 °C
        """);
  }

  @Test
  void writesTheOtherScale() {
    impossibleRoom.checkFix("Write `20 °C`", """
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          set     for 12 h at 20 °F
        """, """
        formula syrup
          batch   1000 g
        stage pan
          50 %    white-sugar
          25 %    glucose-syrup-42
          25 %    water
          set     for 12 h at 20 °C
        """);
  }
}
