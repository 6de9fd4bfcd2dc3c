package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class TotalOffTest {

  private final RuleFixture totalOff = RuleFixture.of(new TotalOff());

  @Test
  void marksAFormulaThatFallsShort() {
    totalOff.check("""
        formula syrup
                ^^^^^ total-off: the lines add up to 99.40 %, 0.60 % too little
        stage pan
          49.40 % white-sugar
          25.00 % glucose-syrup-42
          25.00 % water
        """);
  }

  @Test
  void marksAFormulaThatHoldsTooMuch() {
    totalOff.check("""
        formula syrup
                ^^^^^ total-off: the lines add up to 100.80 %, 0.80 % too much
        stage pan
          50.80 % white-sugar
          25.00 % glucose-syrup-42
          25.00 % water
        """);
  }

  @Test
  void countsLinesOfAnotherBasis() {
    totalOff.check("""
        formula sour-sugar
                ^^^^^^^^^^ total-off: the lines add up to 107.00 %, 7.00 % too much
        stage mix
          100.00 % white-sugar
          7.00 % of white-sugar citric-acid
        """);
  }

  @Test
  void countsPartsPerMillion() {
    totalOff.check("""
        formula red-sugar
        stage mix
          99.98 % white-sugar
          200 ppm beetroot-red
        """);
  }

  @Test
  void staysQuietWithinRounding() {
    totalOff.check("""
        formula syrup
        stage pan
          33.33 % white-sugar
          33.33 % glucose-syrup-42
          33.33 % water
        """);
  }

  @Test
  void staysQuietExactlyAtTheTolerance() {
    totalOff.check("""
        formula syrup
        stage pan
          49.95 % white-sugar
          50.00 % water
        formula syrup-two
                ^^^^^^^^^ total-off: the lines add up to 99.94 %, 0.060 % too little
        stage pan
          49.94 % white-sugar
          50.00 % water
        """);
  }

  @Test
  void staysQuietWhereALineTakesUpTheRestOrAllIsWeighed() {
    totalOff.check("""
        formula syrup
        stage pan
          50.00 % white-sugar
          q.s. water
        formula syrup-by-weight
        stage pan
          500 g white-sugar
          300 g water
        """);
  }

  @Test
  void staysQuietWhereALineIsUnknown() {
    totalOff.check("""
        formula syrup
        stage pan
          50.00 % white-sugar
          25.00   glucose-syrup-42
        """);
  }

  @Test
  void staysQuietWhereOneLineIsTheWholeThatAllOthersAreOf() {
    totalOff.check("""
        formula syrup
          percent of white-sugar
        stage pan
          100.00 % white-sugar
          50.00 % water
        """);
  }

  @Test
  void leavesATotalToTheModelWhereItHangsOnTheYield() {
    totalOff.check("""
        formula syrup
          percent of finished
        stage pan
          80.00 % white-sugar
          40.00 % water
          cook to 118 °C
        """);
  }

  @Test
  void marksAVariantByItsOwnTotal() {
    totalOff.check("""
        formula syrup
        stage pan
          50.00 % white-sugar
          50.00 % water
        variant syrup-two of syrup
                ^^^^^^^^^ total-off: the lines add up to 101.00 %, 1.00 % too much
          add 1.00 % sea-salt in pan
        """);
  }

  @Test
  void letsTheWaterBeTheRest() {
    totalOff.checkFirstFix(
        "Let `water` be the rest, `q.s.`",
        syrup("49.40 %", "25.00 %", "25.00 %"),
        syrup("49.40 %", "25.00 %", "q.s.   "));
  }

  @Test
  void scalesEveryLine() {
    totalOff.checkFix(
        "Scale all lines by 100 / 99.40",
        syrup("49.40 %", "25.00 %", "25.00 %"),
        syrup("49.70 %", "25.15 %", "25.15 %"));
  }

  @Test
  void givesWhatRoundingLeavesToTheLargestLine() {
    totalOff.checkFix(
        "Scale all lines by 100 / 90.00",
        syrup("30.10 %", "30.00 %", "29.90 %"),
        syrup("33.45 %", "33.33 %", "33.22 %"));
  }

  @Test
  void addsTheRestToTheLargestLine() {
    totalOff.checkFix(
        "Add 0.60 % to `white-sugar`",
        syrup("49.40 %", "25.00 %", "25.00 %"), syrup("50.00 %", "25.00 %", "25.00 %"));
  }

  @Test
  void takesTheExcessOffTheLargestLine() {
    totalOff.checkFix(
        "Take 0.80 % off `white-sugar`",
        syrup("50.80 %", "25.00 %", "25.00 %"), syrup("50.00 %", "25.00 %", "25.00 %"));
  }

  @Test
  void scalesAroundWhatIsOfAnotherBasis() {
    totalOff.checkFix("Scale all lines by 100 / 107.00", """
        formula sour-sugar
        stage mix
          100.00 % white-sugar
            7.00 % of white-sugar citric-acid
        """, """
        formula sour-sugar
        stage mix
          93.46 % white-sugar
            7.00 % of white-sugar citric-acid
        """);
  }

  @Test
  void changesOnlyWhatTheVariantWrites() {
    totalOff.checkFix("Take 0.40 % off `honey`", """
        formula syrup
        stage pan
          50.00 % white-sugar
          50.00 % water

        variant syrup-two of syrup
          replace white-sugar by 50.40 % honey
        """, """
        formula syrup
        stage pan
          50.00 % white-sugar
          50.00 % water

        variant syrup-two of syrup
          replace white-sugar by 50.00 % honey
        """);
  }

  private static String syrup(String sugar, String glucose, String water) {
    return "formula syrup\nstage pan\n  %s  white-sugar\n  %s  glucose-syrup-42\n  %s  water\n"
        .formatted(sugar, glucose, water);
  }
}
