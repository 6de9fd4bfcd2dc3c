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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ShowCommandTest {

  private static Run show(String formula, String... options) {
    String[] arguments = new String[options.length + 4];
    arguments[0] = "show";
    arguments[1] = formula;
    arguments[2] = "--in";
    arguments[3] = Run.SAMPLES;
    System.arraycopy(options, 0, arguments, 4, options.length);
    return Run.of(arguments);
  }

  @ParameterizedTest
  @ValueSource(strings = {"egg-honey-nougat", "heather-nougat-plant", "orchard-bar"})
  void showsASample(String formula) {
    Run run = show(formula);
    assertEquals(ExitCode.DONE, run.code(), run.err());
    Pinned.resource("cli/show/" + formula + ".txt").check(run.out(), ShowCommandTest.class);
  }

  @Test
  void explainsWhatWasComputed() {
    Pinned.resource("cli/show/italian-meringue-explained.txt")
        .check(show("italian-meringue", "--explain").out(), ShowCommandTest.class);
  }

  @Test
  void writesCsv() {
    Pinned.resource("cli/show/orchard-bar.csv")
        .check(show("orchard-bar", "--format", "csv").out(), ShowCommandTest.class);
  }

  @Test
  void writesJson() {
    Pinned.resource("cli/show/orchard-bar.json")
        .check(show("orchard-bar", "--format", "json").out(), ShowCommandTest.class);
  }

  /** By hand: 36 % of 1200 g is 432 g, and a bar that nothing boils away from yields what went in. */
  @Test
  void jsonHoldsTheFiguresOfHandCalculation() {
    JsonObject json =
        JsonParser.parseString(show("orchard-bar", "--format", "json").out()).getAsJsonObject();
    JsonObject paste = json.getAsJsonArray("stages")
        .get(0)
        .getAsJsonObject()
        .getAsJsonArray("rows")
        .get(0)
        .getAsJsonObject();
    assertEquals(432, paste.get("grams").getAsDouble(), 1e-9);
    assertEquals(36, paste.get("percentOfCharge").getAsDouble(), 1e-9);
    JsonObject totals = json.getAsJsonObject("totals");
    assertEquals(1200, totals.get("cookedGrams").getAsDouble(), 1e-9);
    assertEquals(100, totals.get("yieldPercent").getAsDouble(), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "chewy-caramel",
        "egg-honey-nougat",
        "gelatine-marshmallow",
        "heather-nougat",
        "heather-nougat-plant",
        "italian-meringue",
        "orchard-bar",
        "peanut-brittle",
        "pressed-nut-bar",
        "raspberry-jelly",
        "white-fondant"
      })
  void fitsEightyCells(String formula) {
    assertTrue(show(formula, "--explain").out().lines().allMatch(line -> Cells.of(line) <= 80));
  }

  @Test
  void offersANearName() {
    Run run = show("egg-hony-nougat");
    assertEquals(ExitCode.NOT_RUN, run.code());
    assertEquals(
        "kettlemark: no formula is named `egg-hony-nougat`; did you mean `egg-honey-nougat`?\n",
        run.err());
  }

  @Test
  void saysWhatTheNameIsInstead() {
    assertEquals(
        "kettlemark: `honey` is no formula but an ingredient\n", show("honey").err());
    assertEquals(
        "kettlemark: `caramel-dome` is no formula but a product\n",
        show("caramel-dome").err());
  }

  @Test
  void showsWhatItCanOfABrokenFormula(@TempDir Path folder) {
    Bench.write(folder, "a.kettle", Bench.CLEAN.replace("white-sugar", "moon-sugar"));
    Run run = Run.of("show", "plain-syrup", "--in", folder.toString());
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertTrue(run.out().contains("nobody has described `moon-sugar`"), run.out());
    assertTrue(run.out().contains("600.0 g"), run.out());
  }

  @Test
  void saysThatWeightsAreNominal(@TempDir Path folder) {
    Bench.write(folder, "a.kettle", Bench.CLEAN.replace("  batch     1000 g\n", ""));
    Run run = Run.of("show", "plain-syrup", "--in", folder.toString());
    assertTrue(run.out().contains("no batch given"), run.out());
  }

  @Test
  void takesAFileForItsFolder() {
    Run run = Run.of("show", "orchard-bar", "--in", Run.SAMPLES + "/orchard-bar.kettle");
    assertEquals(show("orchard-bar").out(), run.out());
  }

  @Test
  void refusesAFolderThatIsNone() {
    Run run = Run.of("show", "orchard-bar", "--in", "no-such-folder");
    assertEquals(ExitCode.NOT_RUN, run.code());
    assertEquals("kettlemark: no-such-folder is no folder\n", run.err());
  }
}
