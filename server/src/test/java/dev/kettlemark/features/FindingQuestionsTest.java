package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.checks.Rules;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What has to be searched for stands among the fixes of the finding that it mends. */
class FindingQuestionsTest {

  private static final String WET_CHEW = """
      formula milk-chew
        percent of charge
        batch 1000 g
        caution hot-sugar
        texture chewy
      stage base
        30.00 % white-sugar
        30.00 % glucose-syrup-42
        20.00 % condensed-milk
        10.00 % butter
        10.00 % water
        cook to 107 °C ± 1
      """;

  private static final String SOFT_BRITTLE = """
      formula bent-brittle
        percent of charge
        batch 1000 g
        caution hot-sugar
        texture brittle
      stage syrup
        45.00 % white-sugar
        30.00 % glucose-syrup-42
        25.00 % water
        boil under lid for 3 min until dissolved
        cook to 122 °C
      """;

  private static final String OFF = """
      formula cut-caramel
        percent of charge
        batch 2100 g
        expect moisture 5 % ± 0.5
        caution hot-sugar
      stage syrup
        50.00 % white-sugar
        25.00 % glucose-syrup-42
        25.00 % water
        boil under lid for 3 min until dissolved
        cook to 120 °C
      """;

  private static final String HIGH = """
      house high-kitchen
        altitude 2240 m
      formula plain-syrup
        percent of charge
        batch 1000 g
        caution hot-sugar
      stage syrup
        50.00 % white-sugar
        25.00 % glucose-syrup-42
        25.00 % water
        boil under lid for 3 min until dissolved
        cook to 143 °C
      """;

  private static final String GRAINING = """
      formula plain-drop
        percent of charge
        batch 1000 g
        caution hot-sugar
        texture hard
      stage syrup
        70.00 % white-sugar
         5.00 % glucose-syrup-42
        25.00 % water
        boil under lid for 3 min until dissolved
        cook to 150 °C
      """;

  private static final String STICKY = GRAINING
      .replace("70.00 % white", "20.00 % white")
      .replace(" 5.00 % glucose", "60.00 % glucose")
      .replace("25.00 % water", "20.00 % water");

  private static final Map<String, String> TEXTS = Map.of(
      "moisture-off", WET_CHEW,
      "texture-mismatch", SOFT_BRITTLE,
      "expectation-off", OFF,
      "altitude-not-said", HIGH,
      "too-little-doctor", GRAINING,
      "too-much-doctor", STICKY);

  private static List<QuickFixes.Action> answers(String rule) {
    String text = TEXTS.getOrDefault(rule, "");
    FeatureFixture fixture = FeatureFixture.of(text);
    return QuickFixes.answers(fixture.snapshot(), fixture.document(), new Span(0, text.length()))
        .stream()
        .filter(action -> action.finding().rule().id().equals(rule))
        .toList();
  }

  private static List<String> rules(String text) {
    FeatureFixture fixture = FeatureFixture.of(text);
    return fixture.document().entries().stream()
        .flatMap(entry -> Rules.of(fixture.snapshot(), entry).stream())
        .map(finding -> finding.rule().id())
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "moisture-off, Cook to",
    "texture-mismatch, Cook to",
    "expectation-off, Cook to",
    "altitude-not-said, Cook to",
    "too-little-doctor, Exchange",
    "too-much-doctor, Exchange"
  })
  void takesTheFindingAway(String rule, String start) {
    String text = TEXTS.getOrDefault(rule, "");
    assertTrue(rules(text).contains(rule), () -> rule + " is not among " + rules(text));
    List<QuickFixes.Action> answers = answers(rule);
    assertFalse(answers.isEmpty(), rule + " is asked nothing");
    for (QuickFixes.Action answer : answers) {
      assertTrue(answer.title().startsWith(start), answer.title());
      List<TextEdit> edits = answer.edits().values().iterator().next();
      String after = TextEdit.applyAll(text, edits);
      assertFalse(rules(after).contains(rule), answer.title() + "\n" + after);
    }
  }

  /** 143 °C at sea level boil down to what 133.9 °C do at 2240 m; Starzak and Peacock 1997, ISO 2533. */
  @Test
  void saysThatTheNewTemperatureHoldsHere() {
    List<TextEdit> edits =
        answers("altitude-not-said").get(0).edits().values().iterator().next();
    String after = TextEdit.applyAll(HIGH, edits);
    assertTrue(after.contains("cook to 133.9 °C at altitude"), after);
  }

  @Test
  void asksNothingOfWhatIsSound() {
    String sound = OFF.replace("  expect moisture 5 % ± 0.5\n", "");
    FeatureFixture fixture = FeatureFixture.of(sound);
    assertEquals(
        List.of(),
        QuickFixes.answers(fixture.snapshot(), fixture.document(), new Span(0, sound.length())));
  }
}
