package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import dev.kettlemark.Pinned;
import dev.kettlemark.text.Cells;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompareCommandTest {

  @TempDir
  Path folder;

  private static Run compare(String... words) {
    List<String> all = new ArrayList<>(List.of("compare"));
    all.addAll(List.of(words));
    all.addAll(List.of("--in", Run.SAMPLES));
    return Run.of(all.toArray(String[]::new));
  }

  @Test
  void holdsAVariantAgainstItsParent() {
    Pinned.resource("cli/compare/heather-nougat-plant.txt")
        .check(compare("heather-nougat-plant").out(), CompareCommandTest.class);
  }

  /** 1800 g of charge in the text; 14.00 % of it is 252 g, 5 kg of it 700 g. */
  @Test
  void writesJsonForTheBatchThatIsWanted() {
    Run run = compare("heather-nougat-plant", "--format", "json", "--batch", "5kg");
    JsonObject json = JsonParser.parseString(run.out()).getAsJsonObject();
    assertEquals(5000, json.get("batchGrams").getAsDouble(), 1e-9);
    double percent = 0;
    for (JsonElement one : json.getAsJsonArray("amounts")) {
      JsonObject second = one.getAsJsonObject().getAsJsonObject("second");
      if (second != null && second.get("ingredient").getAsString().equals("agave-syrup")) {
        percent = second.get("percentOfCharge").getAsDouble();
      }
    }
    assertEquals(14, percent, 1e-9);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      heather-nougat                            | is no variant
      heather-nougt egg-honey-nougat            | did you mean
      heather-nougat white-sugar                | is no formula
      heather-nougat-plant --language xx-XX     | there are no words in
      orchard-bar-42                            | is a product; name the product
      orchard-bar-42 heather-nougat             | is no product
      """)
  void saysWhyThereIsNoComparison(String words, String expected) {
    Run run = compare(words.split(" "));
    assertEquals(ExitCode.NOT_RUN, run.code(), run.out());
    assertTrue(run.err().contains(expected), run.err());
  }

  @Test
  void holdsAProductAgainstAnother() {
    Pinned.resource("cli/compare/orchard-bar-42-and-caramel-dome.txt")
        .check(compare("orchard-bar-42", "caramel-dome").out(), CompareCommandTest.class);
    JsonObject json = JsonParser.parseString(
            compare("orchard-bar-42", "caramel-dome", "--format", "json").out())
        .getAsJsonObject();
    assertEquals(2, json.getAsJsonArray("parts").size());
  }

  /** A terminal of eighty columns; only a word that is longer itself may stick out. */
  @ParameterizedTest
  @CsvSource({
    "heather-nougat, heather-nougat-plant",
    "heather-nougat, egg-honey-nougat",
    "egg-honey-nougat, gelatine-marshmallow",
    "orchard-bar-42, caramel-dome"
  })
  void staysWithinTheTerminal(String first, String second) {
    for (String language : List.of("en-GB", "de-DE", "fr-FR")) {
      compare(first, second, "--language", language)
          .out()
          .lines()
          .forEach(line -> assertTrue(Cells.of(line) <= 80, line));
    }
  }

  @Test
  void writesToAFile() throws IOException {
    Path file = folder.resolve("two.html");
    assertEquals(
        ExitCode.DONE,
        compare("heather-nougat-plant", "--format", "html", "--out", file.toString())
            .code());
    assertTrue(Bench.read(file).startsWith("<!DOCTYPE html>"));
  }
}
