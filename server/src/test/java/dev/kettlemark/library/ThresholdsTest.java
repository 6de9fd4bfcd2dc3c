package dev.kettlemark.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.checks.Finding;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.quantity.TemperatureDifference;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The usual values are data with their reasons, and a house may set its own. */
class ThresholdsTest {

  static Stream<Threshold<?>> thresholds() {
    return Threshold.all().stream();
  }

  @ParameterizedTest
  @MethodSource("thresholds")
  void eachSaysWhySinceWhenAndWhoSaysSo(Threshold<?> threshold) {
    House.Setting usual = Thresholds.usual(threshold);
    assertTrue(usual.reason().filter(why -> !why.isBlank()).isPresent(), threshold.word());
    assertTrue(usual.source().filter(source -> !source.isBlank()).isPresent(), threshold.word());
    assertTrue(usual.on().isPresent(), threshold.word());
    assertTrue(threshold.form().fits(usual.value().value()), threshold.word());
    assertFalse(threshold.meaning().isBlank(), threshold.word());
  }

  @Test
  void theFileHoldsEachThresholdOnceAndNothingElse() throws IOException {
    Document file = Document.of("usual.kettle", file());
    Entry entry = file.entries().stream()
        .filter(found -> found.declaration().isPresent())
        .findFirst()
        .orElseThrow();
    assertEquals(List.of(), entry.reading().problems());
    House house = (House) entry.declaration().orElseThrow();
    List<String> words =
        house.settings().stream().map(setting -> setting.word().value()).toList();
    assertEquals(Threshold.words(), words);
    assertEquals(words.size(), new TreeSet<>(words).size());
  }

  private static String file() throws IOException {
    try (InputStream stream = Thresholds.class.getResourceAsStream(Thresholds.FILE)) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void aHouseSetsItsOwn() {
    Snapshot snapshot = library("""
        house quay
          threshold total-tolerance 0.2 % "our scales" from "a week of weighing" on 2026-04-02
          threshold hot-syrup 203 °F
          threshold sugar-stage-slack 9 °F
          threshold usual-cook 100-170 °C
        """);
    assertEquals(Ratio.ofFraction(0.002), held(snapshot, Threshold.TOTAL_TOLERANCE));
    // 203 °F is 95 °C, and 9 °F apart is 5 K apart.
    assertEquals(95, held(snapshot, Threshold.HOT_SYRUP).celsius(), 1e-9);
    assertEquals(TemperatureDifference.ofCelsius(5), held(snapshot, Threshold.SUGAR_STAGE_SLACK));
    assertEquals(
        Temperature.ofCelsius(170), held(snapshot, Threshold.USUAL_COOK).high());
    House house = (House)
        snapshot.library().houseFor("a.kettle").flatMap(Entry::declaration).orElseThrow();
    House.Setting setting = house.setting(Threshold.TOTAL_TOLERANCE).orElseThrow();
    assertEquals("our scales", setting.reason().orElseThrow());
    assertEquals("a week of weighing", setting.source().orElseThrow());
    assertEquals(LocalDate.of(2026, 4, 2), setting.on().orElseThrow());
  }

  @Test
  void theUsualHoldsWithoutAHouseAndWhereItSetsNonsense() {
    Ratio usual = Ratio.ofFraction(0.0005);
    assertEquals(usual, held(library(""), Threshold.TOTAL_TOLERANCE));
    assertEquals(
        usual,
        held(library("house quay\n  threshold total-tolerance 3 g\n"), Threshold.TOTAL_TOLERANCE));
  }

  @Test
  void aRuleGoesByTheHouse() {
    String formula = """
        formula syrup
          percent of charge
        stage pan
          50 % white-sugar
          49.9 % water
          mix
        """;
    assertEquals(List.of("total-off"), found("house quay\n" + formula));
    // Within the tolerance it is still no whole, which only a hint says.
    assertEquals(
        List.of("total-just-off"),
        found("house quay\n  threshold total-tolerance 0.1 %\n" + formula));
  }

  @Test
  void theFirstOfTwoLinesHoldsAndTheOtherIsTold() {
    Snapshot snapshot = library("""
        house quay
          threshold total-tolerance 0.2 %
          threshold total-tolerance 0.3 %
        """);
    assertEquals(Ratio.ofFraction(0.002), held(snapshot, Threshold.TOTAL_TOLERANCE));
    Entry house = snapshot.library().houseFor("a.kettle").orElseThrow();
    assertEquals(
        "the threshold `total-tolerance` is already set above, and the first line holds",
        house.reading().problems().get(0).message());
  }

  /** A house may change in all else, and who asked for one threshold is not computed again. */
  @Test
  void onlyWhoAskedIsComputedAgain() {
    AtomicInteger runs = new AtomicInteger();
    Task<Ratio> task = (entry, scope) -> {
      runs.incrementAndGet();
      return scope.ask(Thresholds.holding(entry.uri(), Threshold.TOTAL_TOLERANCE));
    };
    Document formula = Document.of("b.kettle", "formula syrup\n");
    Snapshot snapshot = library("house quay\n  threshold total-tolerance 0.2 %\n");
    snapshot = snapshot.with(snapshot.library().with(formula));
    Entry entry = formula.entries().get(0);
    assertEquals(Ratio.ofFraction(0.002), snapshot.result(task, entry));
    Snapshot other = snapshot.with(snapshot
        .library()
        .with(Document.of(
            "a.kettle",
            "house quay\n  threshold total-tolerance 0.2 %\n  threshold hot-syrup 90 °C\n")));
    assertSame(snapshot.result(task, entry), other.result(task, entry));
    assertEquals(1, runs.get());
    Snapshot changed = other.with(other
        .library()
        .with(Document.of("a.kettle", "house quay\n  threshold total-tolerance 0.3 %\n")));
    assertEquals(Ratio.ofFraction(0.003), changed.result(task, entry));
    assertEquals(2, runs.get());
  }

  private static <T> T held(Snapshot snapshot, Threshold<T> threshold) {
    return Thresholds.holding("a.kettle", threshold).ask(snapshot);
  }

  private static List<String> found(String text) {
    Snapshot snapshot = library(text);
    return snapshot.library().document("a.kettle").orElseThrow().entries().stream()
        .flatMap(entry -> Rules.of(snapshot, entry).stream())
        .map(Finding::rule)
        .map(rule -> rule.id())
        .toList();
  }

  private static Snapshot library(String text) {
    List<Document> all = new ArrayList<>(Pantry.documents());
    all.add(Document.of("a.kettle", text));
    return Snapshot.of(Library.of(all));
  }
}
