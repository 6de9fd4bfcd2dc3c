package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import dev.kettlemark.Pinned;
import dev.kettlemark.text.Cells;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LabelCommandTest {

  private static Run label(String name, String... options) {
    List<String> arguments = new ArrayList<>(List.of("label", name, "--in", Run.SAMPLES));
    arguments.addAll(List.of(options));
    return Run.of(arguments.toArray(String[]::new));
  }

  @ParameterizedTest
  @CsvSource({"caramel-dome, EU", "heather-nougat, US", "heather-nougat-plant, EU"})
  void draftsASample(String name, String market) {
    Run run = label(name, "--market", market);
    assertEquals(ExitCode.DONE, run.code(), run.err());
    Pinned.resource("cli/label/" + name + "-" + market + ".txt")
        .check(run.out(), LabelCommandTest.class);
  }

  @Test
  void writesJson() {
    Pinned.resource("cli/label/orchard-bar-42.json")
        .check(
            label("orchard-bar-42", "--market", "EU", "--format", "json").out(),
            LabelCommandTest.class);
  }

  /** By hand: a dome of 12 g with 30 % of coat weighs 12 / 0.7 = 17.14 g, and 30 g in 100 g are couverture. */
  @Test
  void jsonHoldsTheFiguresOfHandCalculation() {
    JsonObject json = JsonParser.parseString(
            label("caramel-dome", "--market", "EU", "--format", "json").out())
        .getAsJsonArray()
        .get(0)
        .getAsJsonObject();
    assertEquals(12 / 0.7, json.getAsJsonObject("nutrition").get("pieceGrams").getAsDouble(), 1e-9);
    JsonObject first = json.getAsJsonArray("ingredients").get(0).getAsJsonObject();
    assertEquals(30, first.get("gramsIn100g").getAsDouble(), 1e-9);
    assertEquals("couverture-milk-38", first.getAsJsonArray("from").get(0).getAsString());
  }

  /** The house of the samples sells to both. */
  @Test
  void takesTheMarketsOfTheHouse() {
    String out = label("orchard-bar").out();
    assertTrue(out.contains("label for the European Union"), out);
    assertTrue(out.contains("label for the United States"), out);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "chewy-caramel",
        "egg-honey-nougat",
        "heather-nougat-plant",
        "pressed-nut-bar",
        "caramel-dome"
      })
  void saysThatItIsADraftAndFitsEightyCells(String name) {
    String out = label(name).out();
    assertEquals(
        2,
        out.lines().filter("Draft. Check it against current local law."::equals).count());
    assertTrue(out.lines().allMatch(line -> Cells.of(line) <= 80), out);
  }

  @Test
  void offersANearName() {
    Run run = label("caramel-dom");
    assertEquals(ExitCode.NOT_RUN, run.code());
    assertEquals(
        "kettlemark: no formula or product is named `caramel-dom`; did you mean `caramel-dome`?\n",
        run.err());
  }

  @Test
  void saysWhatIsUnknownOfABrokenFormula(@TempDir Path folder) {
    Bench.write(folder, "a.kettle", Bench.CLEAN.replace("white-sugar", "moon-sugar"));
    Run run = Run.of("label", "plain-syrup", "--in", folder.toString());
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertTrue(
        run.out().contains("the allergens of `moon-sugar` are unknown: nobody has stated them"),
        run.out());
    assertTrue(run.out().contains("vegan             unknown: moon-sugar is silent"), run.out());
  }
}
