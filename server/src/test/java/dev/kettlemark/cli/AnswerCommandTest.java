package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import dev.kettlemark.Pinned;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AnswerCommandTest {

  private static Run answer(String... words) {
    List<String> arguments = new ArrayList<>(List.of("answer"));
    arguments.addAll(List.of(words));
    return Run.of(arguments.toArray(String[]::new));
  }

  private static Run inSamples(String... words) {
    List<String> arguments = new ArrayList<>(List.of(words));
    arguments.addAll(List.of("--in", Run.SAMPLES));
    return answer(arguments.toArray(String[]::new));
  }

  @Test
  void tellsHowHotToCook() {
    Pinned.resource("cli/answer/cook.txt")
        .check(
            inSamples("cook", "peanut-brittle", "syrup", "--texture", "brittle", "--explain")
                .out(),
            AnswerCommandTest.class);
  }

  @Test
  void tellsHowAnAgentGetsHot() {
    Pinned.resource("cli/answer/reach.txt")
        .check(
            inSamples("reach", "gelatine-marshmallow", "gelatine-250").out(),
            AnswerCommandTest.class);
  }

  @Test
  void showsWhatAnotherMaterialChanges() {
    Run run = inSamples("swap", "heather-nougat", "heather-honey", "--by", "14.00 % agave-syrup");
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertTrue(run.out().contains("agave-syrup"), run.out());
    assertTrue(run.out().contains("honey-infant"), run.out());
    Run json = inSamples(
        "swap", "heather-nougat", "heather-honey", "--by", "agave-syrup", "--format", "json");
    assertTrue(JsonParser.parseString(json.out()).getAsJsonObject().size() > 0);
    Run nothing = inSamples("swap", "heather-nougat", "butter", "--by", "agave-syrup");
    assertEquals(ExitCode.NOT_RUN, nothing.code());
    assertTrue(nothing.err().contains("weighs no `butter`"), nothing.err());
  }

  @Test
  void exchangesSugarForSyrup() {
    Pinned.resource("cli/answer/doctor.txt")
        .check(
            inSamples("doctor", "white-fondant", "syrup", "--share", "18", "%").out(),
            AnswerCommandTest.class);
  }

  /** 143 °C at sea level: water boils 5.4 °C lower at 1609 m, a syrup of 96 % by more; ISO 2533. */
  @Test
  void cooksAtAnotherAltitude() {
    Run run = answer("altitude", "143", "°C", "--from", "0", "m", "--to", "1609", "m");
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertTrue(run.out().startsWith("Cook to 136.5 °C at 1609 m"), run.out());
    assertEquals(run.out(), answer("altitude", "143C", "--to", "1609m").out());
    assertEquals(run.out(), answer("altitude", "289.4", "°F", "--to=1609m").out());
  }

  @Test
  void takesTheSyrupOfAFormula() {
    Run run = inSamples("altitude", "120C", "--to", "2000m", "--syrup", "chewy-caramel", "base");
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertTrue(run.out().startsWith("Cook to 11"), run.out());
  }

  /** 12 g · √(250/200) = 13.4 g, 12 g · 250/200 = 15 g; by hand. */
  @Test
  void tellsBothRulesForGelatine() {
    Run run = answer("gelatine", "12", "g", "--from", "250", "--to", "200");
    Pinned.resource("cli/answer/gelatine.txt").check(run.out(), AnswerCommandTest.class);
  }

  /** 134 g · 10.90 / 82.40 = 17.7 g; USDA SR26, foods 01124 and 01136. */
  @Test
  void takesDriedWhite() {
    Run run = inSamples("egg-white", "134", "g", "--to", "dried", "--format", "json");
    JsonObject json = JsonParser.parseString(run.out()).getAsJsonObject();
    JsonObject white = json.getAsJsonArray("values").get(0).getAsJsonObject();
    assertEquals("white", white.get("what").getAsString());
    assertEquals(17.73, white.get("figure").getAsDouble(), 0.01);
    assertEquals("g", white.get("unit").getAsString());
  }

  /** By the pantry's ratio 1 : 1; common practice, no source. */
  @Test
  void takesWhatThePantrySaysStandsIn() {
    Run run = answer("egg-white", "134", "g", "--to", "aquafaba");
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertTrue(run.out().startsWith("Use 134.0 g aquafaba"), run.out());
  }

  /** 3.40 % · 0.802 / 1 = 2.73 % with the pantry's solids of a 42 DE syrup; by hand. */
  @Test
  void exchangesOneSugarForAnother() {
    Run run = inSamples(
        "sugar", "heather-nougat", "glucose-syrup-42", "--by", "white-sugar", "--part", "20%");
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertTrue(run.out().startsWith("Exchange 3.40 % glucose-syrup-42 for 2.73 %"), run.out());
  }

  @Test
  void writesACardInEachForm() {
    String[] words = {"mould", "heather-nougat", "--from", "1x", "frame-slab", "--to", "dome-24"};
    for (String format : List.of("card", "html", "markdown")) {
      List<String> all = new ArrayList<>(List.of(words));
      all.addAll(List.of("--format", format));
      Run run = inSamples(all.toArray(String[]::new));
      assertEquals(ExitCode.DONE, run.code(), run.err());
      assertTrue(run.out().contains("206"), run.out());
      assertTrue(run.out().contains("check against current local food law"), run.out());
    }
    Run swap = inSamples(
        "swap", "heather-nougat", "heather-honey", "--by", "agave-syrup", "--format", "card");
    assertTrue(swap.out().contains("What if Heather honey"), swap.out() + swap.err());
    assertTrue(swap.out().contains("Honey and infants"), swap.out());
  }

  @Test
  void writesTheThreeWaysAsData() {
    Run run = inSamples("reach", "raspberry-jelly", "pectin-hm-slow", "--format", "json");
    JsonObject json = JsonParser.parseString(run.out()).getAsJsonObject();
    assertTrue(json.get("hotEnough").getAsBoolean());
    assertEquals(85, json.get("neededCelsius").getAsDouble(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      cook peanut-brittle syrup                       | say what is wanted
      cook peanut-brittle syrup --moisture 3% --aw 0.2 | say only one of
      cook peanut-brittle syrup --moisture 30%        | never 30.0 %
      cook peanut-brittle body --moisture 3%          | those that do are in `syrup`
      cook peanut-brittle sirup --moisture 3%         | did you mean `syrup`
      cook peanut-brittle syrup --texture gelled      | those are brittle, chewy, soft
      doctor peanut-brittle syrup --share 140%        | not at 140.00 %
      doctor peanut-brittle syrup --share 40% --syrup moon-dust | nobody has described `moon-dust`
      reach peanut-brittle butter                     | does not say
      altitude 143C                                   | with --to
      altitude 40C --to 0m                            | nothing boils
      altitude hot --to 0m                            | is not a temperature
      gelatine 12g --from 5 --to 200                  | from 50 to 325
      egg-white 12 --to dried                         | is not a weight
      egg-white 12g --to potato-whip-protein          | nobody has said how much
      sugar heather-nougat butter --by white-sugar    | weighs no `butter`
      sugar heather-nougat white-sugar --by water     | is no sugar or syrup
      mould heather-nougat --from 1x moon --to dome-24 | no mould or frame `moon`
      """)
  void saysWhyThereIsNoAnswer(String words, String expected) {
    Run run = inSamples(words.split(" "));
    assertEquals(ExitCode.NOT_RUN, run.code(), run.out());
    assertTrue(run.err().contains(expected), run.err());
    assertEquals("", run.out());
  }
}
