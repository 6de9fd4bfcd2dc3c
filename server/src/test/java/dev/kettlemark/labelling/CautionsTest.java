package dev.kettlemark.labelling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class CautionsTest {

  private static List<String> open(String text, String name) {
    return LabelFixture.of(text).label(name).cautions().stream()
        .filter(need -> !need.isStated())
        .map(need -> need.caution() + ": " + need.reason())
        .toList();
  }

  private static String formula(String facts, String lines) {
    return "formula f\n  percent of charge\n" + facts + "stage pan\n" + lines;
  }

  @Test
  void asksForBurnsAboveTheLimit() {
    String syrup = "  60 % white-sugar\n  40 % water\n";
    assertEquals(
        List.of("hot-sugar: `cook` brings it to 118 °C"),
        open(formula("", syrup + "  cook to 118 °C\n"), "f"));
    assertEquals(List.of(), open(formula("", syrup + "  cook to 104 °C\n"), "f"));
    assertEquals(
        List.of(), open(formula("  caution hot-sugar\n", syrup + "  cook to 118 °C\n"), "f"));
  }

  @Test
  void leavesWhatAPartCarriesToThePart() {
    String parts = """
        formula inner
          percent of charge
          caution honey-infant
        stage pan
          100 % honey
          mix
        formula outer
          percent of charge
        stage pan
          50 % inner
          50 % date-paste
          mix
        formula outermost
          percent of charge
        stage pan
          50 % inner
          50 % honey
          mix
        """;
    assertEquals(List.of(), open(parts, "outer"));
    assertEquals(List.of("honey-infant: it holds `honey`"), open(parts, "outermost"));
  }

  /** More than 10 % added polyols: Regulation (EU) No 1169/2011, annex III, point 2.4, from memory. */
  @Test
  void asksForTheLaxativeStatementAboveTenPercent() {
    String mannitol = "ingredient pure-polyol\n  contains 100 % mannitol\n";
    assertEquals(
        List.of("laxative: it holds `pure-polyol`: 10.10 % polyol in all"),
        open(mannitol + formula("", "  10.1 % pure-polyol\n  q.s. water\n  mix\n"), "f"));
    assertEquals(
        List.of(), open(mannitol + formula("", "  10 % pure-polyol\n  q.s. water\n  mix\n"), "f"));
  }

  /** Annex V of Regulation (EC) No 1333/2008, from memory: six colours. */
  @Test
  void asksForTheStatementOfTheSixColours() {
    String colour = "ingredient sunny\n  label \"colour (E110)\"\n";
    assertEquals(
        List.of("child-activity: it holds `sunny`"),
        open(colour + formula("", "  1 % sunny\n  q.s. water\n  mix\n"), "f"));
    assertEquals(List.of(), open(formula("", "  1 % turmeric-ground\n  q.s. water\n  mix\n"), "f"));
  }

  @Test
  void asksForRawEggThatNothingHeats() {
    assertEquals(
        List.of("raw-egg: it holds `egg-white`, which gets no warmer than 21 °C"),
        open(formula("", "  40 % egg-white\n  60 % caster-sugar\n  mix\n"), "f"));
    assertEquals(
        List.of(),
        open(formula("", "  40 % egg-white\n  60 % caster-sugar\n  mix\n  warm to 75 °C\n"), "f"));
  }

  @Test
  void doesNotMindTheSpiritOfAFlavour() {
    assertEquals(
        List.of(), open(formula("", "  0.5 % vanilla-extract\n  q.s. water\n  mix\n"), "f"));
    assertEquals(1, open(formula("", "  5 % rum\n  q.s. water\n  mix\n"), "f").size());
  }
}
