package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Pinned;
import dev.kettlemark.analysis.Figure;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.text.Cells;
import org.junit.jupiter.api.Test;

class ExplainCommandTest {

  @Test
  void explainsAThreshold() {
    Run run = Run.of("explain", "total-tolerance");
    assertEquals(ExitCode.DONE, run.code());
    assertTrue(run.out().contains("Usual is 0.05 %"), run.out());
    assertTrue(run.out().contains("common practice, no source"), run.out());
  }

  @Test
  void showsThePageOfARule() {
    Run run = Run.of("explain", "missing-unit");
    assertEquals(ExitCode.DONE, run.code(), run.err());
    Pinned.resource("cli/explain/missing-unit.txt").check(run.out(), ExplainCommandTest.class);
  }

  @Test
  void tellsWhatAHouseMaySet() {
    Run run = Run.of("explain", "total-off");
    assertTrue(run.out().contains("What a house may set"), run.out());
    assertTrue(run.out().contains("threshold total-tolerance 0.05 %"), run.out());
    assertTrue(!Run.of("explain", "missing-unit").out().contains("What a house may set"));
  }

  @Test
  void showsEveryPageInEightyCells() {
    Rules.all().forEach(rule -> {
      Run run = Run.of("explain", rule.info().id());
      assertEquals(ExitCode.DONE, run.code(), run.err());
      assertTrue(run.out().lines().allMatch(line -> Cells.of(line) <= 80), run.out());
    });
  }

  @Test
  void listsTheRules() {
    String list = Run.of("explain").out();
    assertTrue(Rules.all().stream().allMatch(rule -> list.contains(rule.info().id())));
    assertEquals(
        Rules.all().size(), list.lines().filter(line -> !line.startsWith(" ")).count());
  }

  @Test
  void explainsOneStage() {
    Pinned.resource("cli/explain/first-syrup.txt")
        .check(
            Run.of("explain", "egg-honey-nougat", "first-syrup", "--in", Run.SAMPLES)
                .out(),
            ExplainCommandTest.class);
  }

  @Test
  void explainsTheWaterActivity() {
    String text = Run.of("explain", "egg-honey-nougat", "water-activity", "--in", Run.SAMPLES)
        .out();
    assertTrue(text.contains("water activity: 0."), text);
  }

  @Test
  void explainsOneFigureOfOneStage() {
    Pinned.resource("cli/explain/texture-of-first-syrup.txt")
        .check(
            Run.of(
                    "explain",
                    "egg-honey-nougat",
                    "texture",
                    "--of",
                    "first-syrup",
                    "--in",
                    Run.SAMPLES)
                .out(),
            ExplainCommandTest.class);
  }

  @Test
  void explainsEveryFigureOfEveryFormula() {
    for (Figure figure : Figure.values()) {
      String text =
          Run.of("explain", "white-fondant", figure.word(), "--in", Run.SAMPLES).out();
      assertTrue(text.startsWith("the whole, " + figure.title() + "\n"), text);
      assertTrue(text.lines().count() > 2, text);
    }
  }

  @Test
  void offersANearFigureOrStage() {
    assertEquals(
        "kettlemark: no figure is named `densty`; did you mean `density`?\n",
        Run.of("explain", "orchard-bar", "densty", "--of", "dough", "--in", Run.SAMPLES)
            .err());
    assertEquals(
        "kettlemark: `orchard-bar` has no stage `dogh`; did you mean `dough`?\n",
        Run.of("explain", "orchard-bar", "density", "--of", "dogh", "--in", Run.SAMPLES)
            .err());
  }

  @Test
  void saysWhereNothingWasComputed() {
    Run run = Run.of("explain", "orchard-bar", "slab", "--in", Run.SAMPLES);
    assertEquals(ExitCode.DONE, run.code());
    assertTrue(run.out().startsWith("Nothing was computed for slab"), run.out());
  }

  @Test
  void offersANearRuleFormulaOrStage() {
    Run rule = Run.of("explain", "missing-unt", "--in", Run.SAMPLES);
    assertEquals(ExitCode.NOT_RUN, rule.code());
    assertTrue(rule.err().contains("did you mean `missing-unit`"), rule.err());
    Run formula = Run.of("explain", "orchard-ba", "--in", Run.SAMPLES);
    assertTrue(formula.err().contains("`orchard-bar`"), formula.err());
    Run stage = Run.of("explain", "orchard-bar", "dogh", "--in", Run.SAMPLES);
    assertEquals(
        "kettlemark: `orchard-bar` has no stage or figure `dogh`; did you mean `dough`?\n",
        stage.err());
  }
}
