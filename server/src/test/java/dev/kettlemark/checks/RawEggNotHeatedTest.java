package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** 56.7 °C for minutes pasteurises egg white (9 CFR 590.570); 71.1 °C is safe at once (160 °F, from memory). */
class RawEggNotHeatedTest {

  private final RuleFixture rawEggNotHeated = RuleFixture.of(new RawEggNotHeated());

  private static final String COLD = """
      formula foam
        percent of charge
        batch 500 g
      stage bowl
        40 % egg-white
        60 % caster-sugar
        whip egg-white until foam
        mix
      """;

  @Test
  void findsACoolFoam() {
    rawEggNotHeated.check("""
        formula foam
          percent of charge
          batch 500 g
        stage bowl
          40 % egg-white
               ^^^^^^^^^ raw-egg-not-heated: `egg-white` is raw and comes to 21 °C at the most
          60 % caster-sugar
          whip egg-white until foam
          mix
        """);
    rawEggNotHeated.checkSeverity(Severity.ERROR, COLD);
  }

  @Test
  void warnsWhereHoldingItWarmMayDo() {
    rawEggNotHeated.checkSeverity(Severity.WARNING, COLD + "  warm to 60 °C\n");
  }

  @Test
  void staysQuietWhereItIsHeatedOrPasteurised() {
    rawEggNotHeated.check(COLD + "  warm to 75 °C\n");
    rawEggNotHeated.check(COLD.replace("egg-white", "egg-white-pasteurised"));
    rawEggNotHeated.check(COLD.replace("egg-white", "egg-white-powder"));
  }

  @Test
  void followsTheFoamIntoALaterStage() {
    rawEggNotHeated.check(COLD + """
        stage oven
          all of bowl
          dry for 2 h at 95 °C
        """);
  }

  @Test
  void isOnlyWorthKnowingWhereTheReaderIsWarned() {
    rawEggNotHeated.checkSeverity(
        Severity.INFORMATION,
        COLD.replace("  batch 500 g\n", "  batch 500 g\n  caution raw-egg\n"));
  }

  @Test
  void usesPasteurisedWhiteThroughout() {
    rawEggNotHeated.checkFirstFix("Use `egg-white-pasteurised`", COLD, """
        formula foam
          percent of charge
          batch 500 g
        stage bowl
          40 % egg-white-pasteurised
          60 % caster-sugar
          whip egg-white-pasteurised until foam
          mix
        """);
  }
}
