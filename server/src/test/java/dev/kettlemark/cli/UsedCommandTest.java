package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import dev.kettlemark.Pinned;
import dev.kettlemark.text.Cells;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UsedCommandTest {

  @ParameterizedTest
  @ValueSource(strings = {"white-sugar", "wafer-paper", "foam", "heather-nougat", "chewy-caramel"})
  void showsTheSamples(String name) {
    Run run = Run.of("used", name, "--in", Run.SAMPLES);
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertTrue(run.out().lines().allMatch(line -> Cells.of(line) <= 80), run.out());
    Pinned.resource("cli/used/" + name + ".txt").check(run.out(), UsedCommandTest.class);
  }

  @Test
  void writesJson() {
    JsonObject json = JsonParser.parseString(
            Run.of("used", "heather-honey", "--in", Run.SAMPLES, "--format", "json")
                .out())
        .getAsJsonObject();
    JsonObject first = json.getAsJsonArray("uses").get(0).getAsJsonObject();
    assertEquals("heather-nougat", first.get("name").getAsString());
    assertEquals(14.0, first.get("percent").getAsDouble(), 1e-9);
    assertEquals(252.0, first.get("grams").getAsDouble(), 1e-9);
    assertTrue(first.get("file").getAsString().endsWith("heather-nougat.kettle"));
    assertEquals(40, first.get("line").getAsInt());
  }

  @Test
  void saysThatNothingUsesIt() {
    Run run = Run.of("used", "licorice-extract", "--in", Run.SAMPLES);
    Run other = Run.of("used", "gelatine-160", "--in", Run.SAMPLES);
    assertEquals(ExitCode.NOT_RUN, run.code());
    assertEquals("gelatine-160: nothing of this library uses it\n", other.out());
  }

  @Test
  void namesWhatMayBeMeant() {
    Run run = Run.of("used", "hether-honey", "--in", Run.SAMPLES);
    assertEquals(ExitCode.NOT_RUN, run.code());
    assertTrue(run.err().contains("did you mean `heather-honey`?"), run.err());
  }
}
