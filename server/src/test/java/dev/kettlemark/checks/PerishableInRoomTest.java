package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/**
 * Limits: 21 CFR 114.3 (pH 4.6, water activity 0.85) and FDA Food Code 2022, 1-201.10 and 3-501.19, from
 * memory.
 */
class PerishableInRoomTest {

  private final RuleFixture perishableInRoom = RuleFixture.of(new PerishableInRoom());

  @Test
  void marksAWetPieceThatIsNotSour() {
    perishableInRoom.check(
        slab("  expect acidity 5.0-5.4 pH\n", "boil for 2 min", "3 days at 18 °C", """
                       ^^^^^ perishable-in-room: `sweet` has a water activity of 0.92–0.96, and pH 5.4 is expected
        """));
    perishableInRoom.checkSeverity(
        Severity.ERROR, slab("  expect acidity 5.0-5.4 pH\n", "boil for 2 min", "3 days", ""));
  }

  @Test
  void asksForTheAcidity() {
    perishableInRoom.check(slab("", "boil for 2 min", "3 days at 18 °C", """
                       ^^^^^ perishable-in-room: `sweet` has a water activity of 0.92–0.96, and nothing says its pH
        """));
    perishableInRoom.checkSeverity(Severity.WARNING, slab("", "boil for 2 min", "3 days", ""));
  }

  @Test
  void isDoubtfulWhereTheRangeTouchesTheLimit() {
    perishableInRoom.checkSeverity(
        Severity.WARNING, slab("  expect acidity 4.5-4.8 pH\n", "boil for 2 min", "3 days", ""));
  }

  @Test
  void isWorthKnowingWhereTheWaterActivityTouchesTheLimit() {
    perishableInRoom.checkSeverity(
        Severity.INFORMATION, slab("", "cook to 103.8 °C", "3 days", ""));
  }

  @Test
  void staysQuietOverASourADryAndAColdPiece() {
    perishableInRoom.check(slab("  expect acidity 3.2-4.6 pH\n", "boil for 2 min", "3 days", ""));
    perishableInRoom.check(slab("", "cook to 108 °C", "3 days", ""));
    perishableInRoom.check(slab("", "boil for 2 min", "3 days at 2-5 °C", ""));
    perishableInRoom.check(slab("", "boil for 2 min", "3 days below 5 °C", ""));
    perishableInRoom.check(slab("", "boil for 2 min", "4 h at 18 °C", ""));
  }

  @Test
  void whatIsCheckedCountsToo() {
    perishableInRoom.check(slab("", "check acidity 3.4 pH", "3 days", ""));
  }

  /** What was measured wins over what is expected, and the latest trial over those before it. */
  @Test
  void whatWasMeasuredWins() {
    String trials = """
        trial T-1 of sweet on 2026-02-02
          measured 3.5 pH
        trial T-2 of sweet on 2026-03-02
          measured 5.1 pH
        """;
    perishableInRoom.checkSeverity(
        Severity.ERROR, slab("  expect acidity 3.4 pH\n", "boil for 2 min", "3 days", "") + trials);
    perishableInRoom.check(slab("  expect acidity 5.4 pH\n", "boil for 2 min", "3 days", "")
        + trials.replace("5.1", "3.6"));
  }

  @Test
  void keepsItCold() {
    perishableInRoom.checkFix(
        "Keep it cold, at 2–5 °C",
        slab("", "boil for 2 min", "3 days at 18 °C", ""),
        slab("", "boil for 2 min", "3 days at 2-5 °C", ""));
    perishableInRoom.checkFix(
        "Keep it cold, at 2–5 °C",
        slab("", "boil for 2 min", "3 days", ""),
        slab("", "boil for 2 min", "3 days at 2-5 °C", ""));
  }

  private static String slab(String fact, String step, String shelf, String mark) {
    return "formula sweet\n  batch   1000 g\n  texture soft\n" + fact + """
        stage pan
          40.00 % white-sugar
          12.00 % glucose-syrup-42
          48.00 % water
        """
        + "  " + step + "\nproduct square\n  centre  12 g sweet\n" + mark + "  shelf   " + shelf
        + "\n";
  }
}
