package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class DepositBelowSettingTest {

  private final RuleFixture depositBelowSetting = RuleFixture.of(new DepositBelowSetting());

  @Test
  void marksADepositBelowTheSettingPoint() {
    depositBelowSetting.check("""
        formula drops
        stage pot
          1 %     agar
          90 %    water
          sprinkle agar into water
          boil    for 3 min
        stage drops
          all of  pot
          deposit pot above 35 °C
                            ^^^^^ deposit-below-setting: `agar` sets below 40 °C, and the mass may come down to 35 °C
        """);
  }

  @Test
  void marksOneWithinTheMargin() {
    depositBelowSetting.check("""
        formula drops
        stage pot
          1 %     agar
          90 %    water
          sprinkle agar into water
          boil    for 3 min
        stage drops
          all of  pot
          deposit pot above 43 °C
                            ^^^^^ deposit-below-setting: `agar` sets below 40 °C, and the mass may come down to 43 °C
        """);
  }

  @Test
  void allowsTheMargin() {
    depositBelowSetting.check("""
        formula drops
        stage pot
          1 %     agar
          90 %    water
          sprinkle agar into water
          boil    for 3 min
        stage drops
          all of  pot
          deposit pot above 45 °C
        """);
  }

  @Test
  void takesTheLowestOfARange() {
    depositBelowSetting.check("""
        formula drops
        stage pot
          1 %     agar
          90 %    water
          sprinkle agar into water
          boil    for 3 min
        stage drops
          all of  pot
          deposit pot at 38-50 °C
                         ^^^^^^^^ deposit-below-setting: `agar` sets below 40 °C, and the mass may come down to 38 °C
        """);
  }

  @Test
  void seesAMassThatHasCooled() {
    depositBelowSetting.check("""
        formula drops
        stage pot
          1 %     agar
          90 %    water
          sprinkle agar into water
          boil    for 3 min
        stage drops
          all of  pot
          cool    to 30 °C
          deposit pot
          ^^^^^^^ deposit-below-setting: `agar` sets below 40 °C, and the mass has about 30 °C here
        """);
  }

  @Test
  void leavesADepositWithoutATemperatureAlone() {
    depositBelowSetting.check("""
        formula drops
        stage pot
          1 %     agar
          90 %    water
          sprinkle agar into water
          boil    for 3 min
        stage drops
          all of  pot
          deposit pot
        """);
  }

  @Test
  void leavesAPowderThatNeverHydratedAlone() {
    depositBelowSetting.check("""
        formula drops
        stage pot
          1 %     agar
          90 %    water
          sprinkle agar into water
        stage drops
          all of  pot
          deposit pot above 35 °C
        """);
  }

  @Test
  void isAnErrorBelow() {
    depositBelowSetting.checkSeverity(Severity.ERROR, """
        formula drops
        stage pot
          1 %     agar
          90 %    water
          sprinkle agar into water
          boil    for 3 min
        stage drops
          all of  pot
          deposit pot above 35 °C
        """);
  }

  @Test
  void isAWarningWithinTheMargin() {
    depositBelowSetting.checkSeverity(Severity.WARNING, """
        formula drops
        stage pot
          1 %     agar
          90 %    water
          sprinkle agar into water
          boil    for 3 min
        stage drops
          all of  pot
          deposit pot above 43 °C
        """);
  }

  @Test
  void depositsWarmer() {
    depositBelowSetting.checkFix("Write `50 °C`", """
        formula drops
        stage pot
          1 %     agar
          90 %    water
          sprinkle agar into water
          boil    for 3 min
        stage drops
          all of  pot
          deposit pot above 35 °C
        """, """
        formula drops
        stage pot
          1 %     agar
          90 %    water
          sprinkle agar into water
          boil    for 3 min
        stage drops
          all of  pot
          deposit pot above 50 °C
        """);
  }

  @Test
  void leavesGelatineJustAboveItsPointAlone() {
    depositBelowSetting.check("""
        formula drops
        stage pot
          2 %     gelatine-200
          90 %    water
          soak    gelatine-200, water for 10 min
          warm    to 60 °C for 5 min
        stage drops
          all of  pot
          deposit pot above 31 °C
        """);
  }

  @Test
  void doubtsGelatineBelowIt() {
    depositBelowSetting.checkSeverity(Severity.WARNING, """
        formula drops
        stage pot
          2 %     gelatine-200
          90 %    water
          soak    gelatine-200, water for 10 min
          warm    to 60 °C for 5 min
        stage drops
          all of  pot
          deposit pot above 25 °C
        """);
  }

  @Test
  void leavesGelatineThatHasCooledAlone() {
    depositBelowSetting.check("""
        formula drops
        stage pot
          2 %     gelatine-200
          90 %    water
          soak    gelatine-200, water for 10 min
          warm    to 60 °C for 5 min
        stage drops
          all of  pot
          cool    to 25 °C
          deposit pot
        """);
  }
}
