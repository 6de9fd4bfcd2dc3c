package dev.kettlemark.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.analysis.AgentReport.Need;
import dev.kettlemark.analysis.AgentReport.Verdict;
import dev.kettlemark.model.State;
import org.junit.jupiter.api.Test;

/** Whether gelling and foaming agents get what their pantry entry asks for. */
class AgentReportTest {

  @Test
  void agarThatBoilsInWaterTakesUpItsWater() {
    String text = """
        formula f
          batch 1000 g
        stage gel
           1 % agar
          99 % water
          disperse agar in water
          boil under lid for 3 min
        """;
    check(text, "gel", Need.HYDRATION, Verdict.REACHED);
    check(text, "gel", Need.BOIL, Verdict.REACHED);
    assertTrue(Bench.left(text, "gel").has(State.HYDRATED));
  }

  @Test
  void agarInAHeavySyrupFindsNoWater() {
    check("""
        formula f
          batch 1000 g
        stage gel
           1 % agar
          69 % white-sugar
          30 % water
          mix
          boil under lid for 3 min
        """, "gel", Need.HYDRATION, Verdict.TOO_MUCH_SUGAR);
  }

  @Test
  void agarThatIsOnlyWarmedStaysAPowder() {
    String text = """
        formula f
          batch 1000 g
        stage gel
           1 % agar
          99 % water
          mix
          warm to 60 °C for 5 min
        """;
    check(text, "gel", Need.HYDRATION, Verdict.NOT_REACHED);
    check(text, "gel", Need.BOIL, Verdict.NOT_REACHED);
  }

  @Test
  void aTimeThatIsTooShortOrUnsaidIsToldApart() {
    String warm = """
        formula f
          batch 1000 g
        stage gel
           1 % iota-carrageenan
          99 % water
          mix
        """;
    check(warm + "  warm to 80 °C for 1 min\n", "gel", Need.HYDRATION, Verdict.TOO_SHORT);
    check(warm + "  warm to 80 °C\n", "gel", Need.HYDRATION, Verdict.TIME_UNSAID);
    check(warm + "  warm to 80 °C for 3 min\n", "gel", Need.HYDRATION, Verdict.REACHED);
    check(
        warm + "  warm to 80 °C for 2 min\n  hold at 78 °C for 2 min\n",
        "gel",
        Need.HYDRATION,
        Verdict.REACHED);
  }

  @Test
  void followsAnAgentThroughTheStagesThatTakeIt() {
    String text = """
        formula f
          batch 1000 g
        stage foam
           0.5 % iota-carrageenan
          19.5 % egg-white-pasteurised
          whip until soft-peak
        stage syrup
          64 % white-sugar
          16 % water
          cook to 121 °C
        stage body
          all of foam
          all of syrup
          stream syrup into foam
        """;
    Agent agent = Bench.left(text, "body").agents().get(0);
    assertEquals("foam", agent.stage());
    assertEquals(5, agent.mass().grams(), 1e-9);
    // Syrup of 121 °C four times the weight of the foam: well above the 70 °C that iota asks for,
    // with far more sugar around it than lets it swell.
    check(text, "body", Need.HYDRATION, Verdict.TOO_MUCH_SUGAR);
  }

  @Test
  void theBandDecidesWhetherHeatIsCertain() {
    String text = """
        house h
          bowl steel holds 5 L weighs 4 kg
        formula f
          batch 1000 g
        stage foam
          60 % egg-white-pasteurised
          warm to 45 °C
        stage syrup
          30 % white-sugar
          10 % water
          cook to 118 °C
        stage body in steel
          all of foam
          all of syrup
          stream syrup into foam
        """;
    // 600 g at 45 °C meet 341 g at 118 °C: above the 62 °C that egg white asks for, but for the
    // cold bowl.
    check(text, "body", Need.COAGULATION, Verdict.PERHAPS);
  }

  @Test
  void gelatineIsSoakedBeforeItIsWarm() {
    String soaked = """
        formula f
          batch 1000 g
        stage gel
           5 % gelatine-200
          95 % water
        """;
    check(
        soaked + "  soak for 20 min\n  warm to 60 °C for 5 min\n",
        "gel",
        Need.SOAK,
        Verdict.REACHED);
    check(soaked + "  mix\n  warm to 60 °C for 5 min\n", "gel", Need.SOAK, Verdict.NOT_REACHED);
  }

  @Test
  void aHydratedGelSetsWhenItIsColdEnough() {
    String text = """
        formula f
          batch 1000 g
        stage gel
           5 % gelatine-200
          95 % water
          soak for 20 min
          warm to 60 °C for 5 min
          rest for 6 h at 15-18 °C
        """;
    check(text, "gel", Need.SETTING, Verdict.REACHED);
    assertTrue(Bench.left(text, "gel").has(State.GELLED));
  }

  private static void check(String text, String stage, Need need, Verdict expected) {
    Agent agent = Bench.left(text, stage).agents().get(0);
    AgentReport found = AgentReport.of(agent).stream()
        .filter(report -> report.need() == need)
        .findFirst()
        .orElseThrow();
    assertEquals(expected, found.verdict(), found.toString());
  }
}
