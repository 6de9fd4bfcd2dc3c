package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Pinned;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.answers.Wish;
import dev.kettlemark.checks.Finding;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.checks.Severity;
import dev.kettlemark.features.ScaleActions.Proposal;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.hipparchus.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class AnswerActionsTest {

  private static final String CANDY = """
      house high "High kitchen"
        altitude  1609 m

      formula candy "Candy"
        percent   of charge
        batch     1000 g
        texture   chewy
        expect    moisture 4.0 % ± 0.2
        caution   hot-sugar

      stage syrup
        70.00 %             white-sugar
         q.s.               water
        boil      under lid until dissolved
        cook      to 127 °C ± 1
      """;

  private static final String FOAM = """
      formula foam "Foam"
        percent   of charge
        batch     1000 g

      stage foam
        40.00 %             egg-white
        60.00 %             caster-sugar
        whip      egg-white on medium until foam
        sprinkle  caster-sugar into egg-white
        whip      until soft-peak
      """;

  private static final String GEL = """
      formula gel "Gel"
        percent   of charge
        batch     1000 g

      stage soak
         1.50 %             gelatine-250
         9.00 %             water
        sprinkle  gelatine-250 into water
        soak      for 20 min until bloomed

      stage body
        89.50 %             white-sugar
        all of              soak
        mix       soak, white-sugar
      """;

  private static final String NOUGAT = """
      house bench "Bench"
        bowl mixer holds 6 L whips 100-3000 g weighs 1.4 kg

      formula nougat "Nougat"
        percent   of charge
        batch     1000 g
        caution   hot-sugar

      stage foam
         0.40 %             iota-carrageenan
        20.00 %             egg-white-pasteurised
         5.00 %             caster-sugar
        whip      until soft-peak

      stage syrup
        60.00 %             white-sugar
         q.s.               water
        boil      under lid until dissolved
        cook      to 118 °C ± 1

      stage body in mixer
        all of              foam
        all of              syrup
        stream    syrup into foam over 60 s
      """;

  /** The proposals with the cursor on the first line that holds a text. */
  private static List<Proposal> at(String text, String line) {
    FeatureFixture fixture = FeatureFixture.of(text);
    int offset = text.indexOf(line);
    return AnswerActions.at(fixture.snapshot(), fixture.document(), Span.at(offset));
  }

  private static List<String> titles(String text, String line) {
    return at(text, line).stream().map(Proposal::title).toList();
  }

  private static String applied(String text, Proposal proposal) {
    return TextEdit.applyAll(text, proposal.edits());
  }

  private static Proposal of(List<Proposal> proposals, String start) {
    return proposals.stream()
        .filter(proposal -> proposal.title().startsWith(start))
        .findFirst()
        .orElseThrow(() -> new AssertionError(
            start + " is not among " + proposals.stream().map(Proposal::title).toList()));
  }

  private static ComputedFormula formula(String text, String name) {
    FeatureFixture fixture = FeatureFixture.of(text);
    return Formulas.computed(name).ask(fixture.snapshot()).orElseThrow();
  }

  private static <T> T known(Outcome<T> outcome) {
    return outcome.toOptional().orElseThrow();
  }

  /** What the texts of this test have before any answer is applied. */
  private static final Set<String> FOUND_BEFORE =
      Set.of("altitude-not-said", "lumping-gum", "hydration-in-syrup");

  /** No answer may leave a text with more errors or warnings than it had. */
  private static void assertClean(String text) {
    FeatureFixture fixture = FeatureFixture.of(text);
    List<String> findings = new ArrayList<>();
    for (Entry entry : fixture.document().entries()) {
      for (Finding finding : Rules.of(fixture.snapshot(), entry)) {
        boolean isGrave =
            finding.severity() == Severity.ERROR || finding.severity() == Severity.WARNING;
        if (isGrave && !FOUND_BEFORE.contains(finding.rule().id())) {
          findings.add(finding.message());
        }
      }
    }
    assertEquals(List.of(), findings, text);
  }

  @Test
  void cooksForTheMoistureThatIsExpected() {
    Proposal proposal = of(at(CANDY, "cook "), "Cook to 137");
    assertEquals("Cook to 137.7 °C for 4.0 % water in the finished mass", proposal.title());
    String after = applied(CANDY, proposal);
    assertTrue(after.contains("cook      to 137.7 °C ± 1\n"), after);
    assertEquals(
        0.04, known(new Wish.FinishedMoisture(Ratio.ONE).figure(formula(after, "candy"), 0)), 2e-4);
    // What is kept already is not asked for again.
    assertTrue(titles(after, "cook ").stream().noneMatch(title -> title.contains("water in the")));
  }

  @Test
  void cooksForTheTextureThatIsDeclared() {
    assertTrue(titles(CANDY.replace("127 °C", "110 °C"), "cook ").stream()
        .anyMatch(title -> title.endsWith("for a chewy bite")));
  }

  /** 127 °C at sea level is 120.9 °C at 1609 m; computed apart, Starzak and Peacock 1997, ISO 2533. */
  @Test
  void cooksForTheSolidsOfSeaLevel() {
    Proposal proposal = of(at(CANDY, "cook "), "Cook to 120.9 °C here");
    assertEquals(
        "Cook to 120.9 °C here for the solids of 127 °C at sea level (0 m → 1609 m)",
        proposal.title());
    assertTrue(applied(CANDY, proposal).contains("cook      to 120.9 °C ± 1"));
  }

  @Test
  void keepsFahrenheit() {
    String text = CANDY.replace("127 °C", "260 °F");
    assertTrue(
        applied(text, of(at(text, "cook "), "Cook to 120.")).contains("cook      to 249.1 °F ± 1"),
        applied(text, of(at(text, "cook "), "Cook to 120.")));
  }

  @Test
  void givesASugarStageATemperature() {
    String text = CANDY.replace("to 127 °C ± 1", "until hard-ball");
    assertTrue(
        applied(text, of(at(text, "cook "), "Cook to 137"))
            .contains("cook      to 137.7 °C until hard-ball"),
        applied(text, of(at(text, "cook "), "Cook to 137")));
  }

  @Test
  void takesAnotherGelatineEverywhere() {
    Proposal proposal = of(at(GEL, "1.50 %"), "Use gelatine-200");
    assertEquals(
        "Use gelatine-200: 1.68 % for gelatine-250 1.50 % (by the linear rule 1.88 %), water 8.82 %",
        proposal.title());
    String after = applied(GEL, proposal);
    assertEquals(
        GEL.replace("gelatine-250", "gelatine-200")
            .replace(" 1.50 %", " 1.68 %")
            .replace(" 9.00 %", " 8.82 %"),
        after);
    assertClean(after);
  }

  @Test
  void takesDriedWhiteAndWetsIt() {
    String after = applied(FOAM, of(at(FOAM, "40.00 %"), "Use egg-white-powder"));
    assertEquals("""
        formula foam "Foam"
          percent   of charge
          batch     1000 g

        stage foam
           5.29 %             egg-white-powder
          60.00 %             caster-sugar
          34.71 %             water
          disperse  egg-white-powder in water until hydrated
          whip      egg-white-powder on medium until foam
          sprinkle  caster-sugar into egg-white-powder
          whip      until soft-peak
        """, after);
    assertClean(after);
    String back = applied(after, of(at(after, " 5.29 %"), "Use egg-white: "));
    assertTrue(back.contains("39.99 %             egg-white\n"), back);
    assertEquals(BigFraction.ONE, formula(back, "foam").amounts().total());
  }

  @Test
  void offersWhatStandsInOfPlants() {
    List<String> titles = titles(FOAM, "40.00 %");
    assertTrue(titles.stream().anyMatch(t -> t.startsWith("Use aquafaba: 40.00 %")), "" + titles);
    assertClean(applied(FOAM, of(at(FOAM, "40.00 %"), "Use aquafaba")));
    assertClean(applied(FOAM, of(at(FOAM, "40.00 %"), "Use soy-whipping-protein")));
  }

  @Test
  void exchangesSugarForTheUsualDoctor() {
    Proposal proposal = of(at(CANDY, "70.00 %"), "Exchange ");
    assertTrue(proposal.title().contains("doctor 45.0 %"), proposal.title());
    String after = applied(CANDY, proposal);
    assertTrue(after.contains("glucose-syrup-42\n"), after);
    assertClean(after.replace("expect    moisture 4.0 % ± 0.2", ""));
  }

  @Test
  void tellsThreeWaysToGetAnAgentHot() {
    for (String line : List.of(" 0.40 %", "stream ")) {
      List<Proposal> proposals = at(NOUGAT, line);
      assertEquals(
          3,
          proposals.stream()
              .filter(p -> p.title().contains("iota-carrageenan gets"))
              .count(),
          "" + proposals.stream().map(Proposal::title).toList());
    }
    List<Proposal> proposals = at(NOUGAT, "stream ");
    assertClean(applied(NOUGAT, of(proposals, "Cook syrup to")));
    String moved = applied(NOUGAT, of(proposals, "Move "));
    assertClean(moved);
    assertEquals(BigFraction.ONE, formula(moved, "nougat").amounts().total());
    String warmed = applied(NOUGAT, of(proposals, "Warm mixer"));
    assertTrue(warmed.contains("note      \"Warm mixer to "), warmed);
    assertClean(warmed);
  }

  /** What a parent wrote cannot be changed in a variant's own text. */
  @Test
  void leavesAloneWhatAVariantInherits() {
    String text = CANDY + """

        variant candy-two "Second" of candy
          batch     900 g
        """;
    assertEquals(List.of(), titles(text, "variant candy-two"));
    assertEquals(List.of(), titles(text, "batch     900"));
  }

  @Test
  void saysNothingOfOtherLinesAndBrokenOnes() {
    assertEquals(List.of(), titles(FOAM, "percent "));
    assertEquals(List.of(), titles(CANDY, "altitude "));
    assertEquals(List.of(), titles(CANDY.replace("to 127 °C ± 1", "to ±"), "caution "));
    String broken = CANDY.replace("white-sugar", "moon-dust");
    assertEquals(List.of(), titles(broken, "cook "));
  }

  /**
   * On every line of every sample: each text that an answer leaves has no error and no warning.
   *
   * <p>The titles are pinned; the nougats and the caramel cook for nothing, since what they declare they
   * keep, or no cook alone can reach it.
   */
  @Test
  void leavesEverySampleClean() {
    List<Document> samples = FeatureFixture.samples("gannet-slip");
    Snapshot snapshot = FeatureFixture.snapshot(samples);
    List<String> titles = new ArrayList<>();
    for (Document document : samples) {
      var source = document.text().source();
      for (int line = 0; line < source.lineCount(); line++) {
        Span at = Span.at(source.line(line).start());
        for (Proposal proposal : AnswerActions.at(snapshot, document, at)) {
          assertSampleClean(samples, document, proposal);
          titles.add(document.uri() + ":" + (line + 1) + "  " + proposal.title() + "\n");
        }
      }
    }
    Pinned.resource("features/sample-answers.txt")
        .check(String.join("", titles), AnswerActionsTest.class);
  }

  private static void assertSampleClean(
      List<Document> samples, Document document, Proposal proposal) {
    String text = TextEdit.applyAll(document.text().source().text(), proposal.edits());
    Document changed = Document.of(document.uri(), text);
    List<Document> all = new ArrayList<>(samples);
    all.replaceAll(one -> one.uri().equals(document.uri()) ? changed : one);
    Snapshot after = FeatureFixture.snapshot(all);
    for (Entry entry : changed.entries()) {
      for (Finding finding : Rules.of(after, entry)) {
        assertTrue(
            finding.severity() != Severity.ERROR && finding.severity() != Severity.WARNING,
            document.uri() + ": " + proposal.title() + ": " + finding.message() + "\n" + text);
      }
    }
  }
}
