package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.science.Check;
import dev.kettlemark.science.Check.Provenance;
import dev.kettlemark.science.CheckTable;
import dev.kettlemark.text.Cells;
import java.util.List;
import org.junit.jupiter.api.Test;

class VerifyModelsCommandTest {

  @Test
  void printsEveryPublishedFigure() {
    Run run = Run.of("verify-models");
    long published = CheckTable.all().stream().filter(Check::isPublished).count();
    assertEquals(ExitCode.DONE, run.code());
    assertTrue(run.out()
        .endsWith(published + " published and " + (CheckTable.all().size() - published)
            + " recomputed figures, all within their tolerance\n"));
    assertTrue(run.out().lines().allMatch(line -> Cells.of(line) <= 80), run.out());
    CheckTable.all().forEach(check -> assertTrue(run.out().contains(check.subject())));
  }

  @Test
  void marksWhatLiesOutside() {
    List<Check> checks = List.of(
        new Check("model", "good", "°C", 100, 100.5, 1, "a table", Provenance.READ),
        new Check("model", "bad", "°C", 100, 102, 1, "a table", Provenance.FROM_MEMORY),
        new Check("model", "none", "", 0.00001, Double.NaN, 1, "a table", Provenance.FROM_MEMORY));
    assertEquals("""
                    published  computed  difference  tolerance
        model (a table)
          good, °C        100     100.5         0.5          1
        model (a table, from memory)
          bad, °C         100       102   outside 2          1
          none           1e-5   unknown     outside          1
        """, String.join("\n", VerifyModelsCommand.lines(checks, 80)) + "\n");
  }
}
