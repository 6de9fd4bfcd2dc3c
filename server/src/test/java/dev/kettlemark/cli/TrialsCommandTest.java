package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import dev.kettlemark.Pinned;
import dev.kettlemark.text.Cells;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TrialsCommandTest {

  private static Run trials(String... options) {
    String[] arguments = new String[options.length + 3];
    arguments[0] = "trials";
    arguments[1] = "--in";
    arguments[2] = Run.SAMPLES;
    System.arraycopy(options, 0, arguments, 3, options.length);
    return Run.of(arguments);
  }

  @Test
  void showsTheSamples() {
    Run run = trials();
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertTrue(run.out().lines().allMatch(line -> Cells.of(line) <= 80), run.out());
    Pinned.resource("cli/trials/gannet-slip.txt").check(run.out(), TrialsCommandTest.class);
  }

  @Test
  void showsOneFormula() {
    String out = trials("gelatine-marshmallow").out();
    assertTrue(out.contains("T-019"), out);
    assertTrue(!out.contains("T-014"), out);
    assertTrue(out.contains("too few to correct (n = 1)"), out);
  }

  @Test
  void writesTheNextTrial() {
    Run run = trials("heather-nougat", "--next");
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertTrue(run.out().startsWith("trial T-022 of heather-nougat on "), run.out());
    assertTrue(run.out().contains("predicted 139.0–141.0 °C"), run.out());
    Run nameless = trials("--next");
    assertEquals(ExitCode.NOT_RUN, nameless.code());
    assertTrue(nameless.err().contains("--next needs the name of a formula"), nameless.err());
  }

  /** By hand: three trials of one nougat, four of the house. */
  @Test
  void writesJson() {
    JsonObject json = JsonParser.parseString(trials("--format", "json").out()).getAsJsonObject();
    assertEquals(4, json.getAsJsonArray("trials").size());
    JsonObject house = json.getAsJsonArray("houses").get(0).getAsJsonObject();
    assertEquals("gannet-slip", house.get("name").getAsString());
    JsonObject overrun = house
        .getAsJsonObject("formulas")
        .getAsJsonArray("heather-nougat")
        .get(2)
        .getAsJsonObject();
    assertEquals("overrun", overrun.get("quantity").getAsString());
    assertEquals(3, overrun.getAsJsonArray("trials").size());
    assertTrue(overrun.get("enough").getAsBoolean());
    JsonObject density = json.getAsJsonArray("trials")
        .get(0)
        .getAsJsonObject()
        .getAsJsonArray("readings")
        .get(5)
        .getAsJsonObject();
    assertEquals(0.93, density.get("measured").getAsDouble(), 1e-9);
    assertTrue(density.has("predicted"), density.toString());
  }

  @Test
  void namesAFormulaThatIsNotThere() {
    Run run = trials("hether-nougat");
    assertEquals(ExitCode.NOT_RUN, run.code());
    assertTrue(run.err().contains("did you mean `heather-nougat`?"), run.err());
  }

  @Test
  void saysThatThereAreNone(@TempDir Path folder) {
    Bench.write(folder, "a.kettle", Bench.CLEAN);
    assertEquals("no trials\n", Run.of("trials", "--in", folder.toString()).out());
  }

  @Test
  void listsATrialOfAnUnknownFormula(@TempDir Path folder) {
    Bench.write(folder, "a.kettle", "trial T-1 of nothing\n  measured 3 g weight of pan\n");
    assertTrue(Run.of("trials", "--in", folder.toString()).out().contains("nothing is predicted"));
  }
}
