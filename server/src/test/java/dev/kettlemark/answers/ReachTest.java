package dev.kettlemark.answers;

import static dev.kettlemark.answers.Workbench.because;
import static dev.kettlemark.answers.Workbench.known;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.quantity.Outcome;
import org.hipparchus.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class ReachTest {

  private static final String NOUGAT = """
      house bench "Bench"
        bowl mixer holds 6 L whips 100-3000 g weighs 1.4 kg
        room at 20 °C
      formula f
        percent of charge
        batch 1000 g
      stage foam
         0.40 % iota-carrageenan
        20.00 % egg-white
         5.00 % caster-sugar
        whip until soft-peak
      stage syrup
        60.00 % white-sugar
        q.s. water
        cook to 118 °C ± 1
      stage body in mixer
        all of foam
        all of syrup
        stream syrup into foam over 60 s
      """;

  private static Reach reach(String text) {
    return known(Reach.of(Workbench.of(text).formula("f"), "iota-carrageenan"));
  }

  private static Answer way(Reach reach, String word) {
    return known(reach.ways().stream()
        .filter(way -> way.word().equals(word))
        .findFirst()
        .orElseThrow()
        .answer());
  }

  private static double lowEnd(ComputedFormula formula) {
    return known(AgentHeat.of(formula, "iota-carrageenan"))
        .meeting()
        .orElseThrow()
        .temperature()
        .low()
        .celsius();
  }

  /** Iota carrageenan hydrates above 70 °C: Phillips and Williams 2009, from memory. */
  @Test
  void eachWayReachesWhatIsNeeded() {
    ComputedFormula formula = Workbench.of(NOUGAT).formula("f");
    Reach reach = reach(NOUGAT);
    assertFalse(reach.heat().isEnough());
    assertTrue(lowEnd(formula) < 70, "" + lowEnd(formula));
    for (String word : new String[] {"hotter-syrup", "more-syrup", "warmer-bowl"}) {
      Answer answer = way(reach, word);
      double low = lowEnd(Change.tried(formula, answer.changes()));
      assertTrue(low >= 70 - 1e-6 && low < 71.5, word + " gives " + low);
    }
  }

  /** Moving amounts keeps the whole. */
  @Test
  void movesSyrupAtEqualTotal() {
    ComputedFormula formula = Workbench.of(NOUGAT).formula("f");
    ComputedFormula after =
        Change.tried(formula, way(reach(NOUGAT), "more-syrup").changes());
    assertEquals(BigFraction.ONE, after.amounts().total());
    assertEquals(
        formula.amounts().shareOf("iota-carrageenan"), after.amounts().shareOf("iota-carrageenan"));
    assertTrue(after.amounts().totalOf(1).compareTo(formula.amounts().totalOf(1)) > 0);
  }

  @Test
  void saysThatItIsHotEnough() {
    Reach reach = reach(NOUGAT.replace("20.00 % egg-white", "8.00 % egg-white"));
    assertTrue(reach.heat().isEnough());
    assertTrue(reach.ways().isEmpty());
  }

  /** The fact asks for less than 40 % solids, and a nougat holds twice that. */
  @Test
  void tellsThatSolidsKeepTheWaterFromIt() {
    assertTrue(reach(NOUGAT).notes().stream().anyMatch(note -> note.contains("below 40 % solids")));
  }

  @Test
  void tellsWhatCanBeReachedWhereItIsTooCold() {
    Reach reach = reach(NOUGAT
        .replace("20.00 % egg-white", "55.00 % egg-white")
        .replace("60.00 % white-sugar", "30.00 % white-sugar"));
    String because = because(reach.ways().get(0).answer());
    assertTrue(because.contains("and `iota-carrageenan` needs 70 °C"), because);
  }

  @Test
  void asksForTheBowl() {
    Outcome<Answer> warmer = reach(NOUGAT
            .replace("body in mixer", "body")
            .replace("20.00 % egg-white", "30.00 % egg-white")
            .replace("60.00 % white-sugar", "50.00 % white-sugar"))
        .ways()
        .get(2)
        .answer();
    assertTrue(because(warmer).contains("names no bowl"), because(warmer));
  }

  /** A syrup that is cooled first brings what it was cooled to, and that step is the one to change. */
  @Test
  void changesTheStepThatGivesTheHeat() {
    String cooled = NOUGAT
        .replace(
            "  stream syrup into foam over 60 s", "  cool syrup to 80 °C\n  stream syrup into foam")
        .replace("cook to 118 °C", "cook to 150 °C")
        .replace("20.00 % egg-white", "15.00 % egg-white");
    Answer answer = way(reach(cooled), "hotter-syrup");
    assertTrue(answer.instruction().startsWith("Bring syrup to "), answer.instruction());
    assertEquals(2, ((Change.Cook) answer.changes().get(0)).place().stage());
  }

  @Test
  void isUnknownForWhatNeedsNoHeat() {
    ComputedFormula formula = Workbench.of(NOUGAT).formula("f");
    assertTrue(because(Reach.of(formula, "egg-white")).contains("does not say"));
    assertEquals("the formula weighs no `agar`", because(Reach.of(formula, "agar")));
  }

  @Test
  void isUnknownWhereNothingHotComesToIt() {
    String cold =
        NOUGAT.replace("all of syrup", "").replace("stream syrup into foam over 60 s", "");
    String because = because(Reach.of(Workbench.of(cold).formula("f"), "iota-carrageenan"));
    assertTrue(because.contains("no step brings it together with something hot"), because);
  }
}
