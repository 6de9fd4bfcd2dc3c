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
}
