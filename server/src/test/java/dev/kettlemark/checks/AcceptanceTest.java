package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Today;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.text.TextEdit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is accepted, where, and for how long. */
class AcceptanceTest {

  private static final String SYRUP = """
      formula syrup
        percent of charge
        accept total-off "as in the old book"
      stage pan
        49 % white-sugar
        49 % water
        mix
      """;

  @Test
  void isNoLongerToldButCounted() {
    assertEquals(List.of(), shown(SYRUP, Today.DAY));
    assertEquals(
        List.of("total-off: as in the old book"),
        accepted(SYRUP, Today.DAY, 0).stream()
            .map(
                known -> known.finding().rule().id() + ": " + known.acceptance().reasonText())
            .toList());
  }

  @Test
  void keepsTheFindingAsTheRuleMadeIt() {
    Finding finding = accepted(SYRUP, Today.DAY, 0).get(0).finding();
    assertEquals(Severity.ERROR, finding.severity());
    assertEquals("the lines add up to 98.00 %, 2.00 % too little", finding.message());
  }

  @Test
  void holdsOnItsLastDayAndNoLonger() {
    String text = SYRUP.replace("book\"", "book\" until 2026-12-31");
    assertEquals(List.of(), shown(text, LocalDate.of(2026, 12, 31)));
    assertEquals(
        List.of("lapsed-acceptance", "total-off"),
        shown(text, LocalDate.of(2027, 1, 1)).stream().sorted().toList());
  }

  @Test
  void doesNotHoldWithoutAReason() {
    List<String> both = List.of("total-off", "unfilled-reason");
    assertEquals(both, sorted(SYRUP.replace(" \"as in the old book\"", "")));
    assertEquals(both, sorted(SYRUP.replace("as in the old book", "reason")));
  }

  @Test
  void holdsForItsOwnStageOnly() {
    String text = """
        formula syrup
        stage pan
          50 white-sugar
          50 % water
          accept missing-unit "the scale says"
          mix
        stage bowl
          all of pan
          5 honey
          mix
        """;
    Verdict verdict = judged(text, Today.DAY, 0);
    assertEquals(
        List.of("5 of what unit"),
        verdict.shown().stream()
            .filter(finding -> finding.rule().id().equals("missing-unit"))
            .map(Finding::message)
            .toList());
    assertEquals("50 of what unit", verdict.accepted().get(0).finding().message());
  }

  @Test
  void cannotHideABrokenLine() {
    assertEquals(List.of("unknown-rule", "unreadable-text"), sorted("""
            formula syrup
              accept unreadable-text "the cook knows"
              batxh 100 g
            """));
  }

  /** Burning sugar can catch fire: common caution of the trade, no source. */
  @Test
  void leavesSafetyListedWithTheReason() {
    String text = """
        formula black-caramel
          percent of charge
        stage pan
          100 % white-sugar
          cook to 200 °C
          accept burning-syrup "smoked on purpose, with the extractor on"
        """;
    Verdict verdict = judged(text, Today.DAY, 0);
    Finding listed = verdict.shown().stream()
        .filter(finding -> finding.rule().id().equals("burning-syrup"))
        .findFirst()
        .orElseThrow();
    assertEquals(Severity.INFORMATION, listed.severity());
    assertEquals(
        "sugar burns at 200 °C; accepted: smoked on purpose, with the extractor on",
        listed.message());
    assertEquals(Severity.ERROR, verdict.accepted().get(0).finding().severity());
    assertTrue(Acceptances.offer(entries(text).get(0), listed).isEmpty());
  }

  @Test
  void aVariantInheritsWhatIsAcceptedOnItsParentsLines() {
    String variant = SYRUP + """
        variant less of syrup
          change 48 % water
        """;
    assertEquals(List.of(), shown(variant, Today.DAY));
    assertEquals(1, accepted(variant, Today.DAY, 1).size());
    String third = variant + """
        variant least of less
          change 47 % water
        """;
    assertEquals(1, accepted(third, Today.DAY, 2).size());
  }

  @Test
  void aVariantMayWithdrawWhatItsParentAccepts() {
    assertEquals(List.of("total-off"), shown(SYRUP + """
        variant less of syrup
          change 48 % water
          withdraw accept total-off
        """, Today.DAY));
  }

  @Test
  void aVariantsOwnLinesAreItsOwnMatter() {
    String text = """
        formula syrup
          percent of charge
          accept missing-scale "the cook knows"
        stage pan
          q.s. water
          cook to 120
        variant other of syrup
        stage pan again
          cook to 121
        """;
    assertEquals(
        List.of("missing-scale"),
        shown(text, Today.DAY).stream().filter("missing-scale"::equals).toList());
  }

  @Test
  void circlesOfVariantsEnd() {
    assertTrue(shown("""
        variant a of b
          accept total-off "x"
        variant b of a
          accept total-off "y"
        """, Today.DAY).contains("circular-formula"));
  }

  @Test
  void aProductAcceptsToo() {
    String text = """
        formula syrup
          percent of charge
        stage pan
          50 % white-sugar
          50 % water
          mix
        product cube
          centre 10 g syrup
          coat 20 % couverture-dark-62
        """;
    assertEquals(List.of("coat-without-basis"), shown(text, Today.DAY));
    assertEquals(
        List.of(),
        shown(text + "  accept coat-without-basis \"as the house always does\"\n", Today.DAY));
  }

  /** What the rules found outlives a new day, although the verdict does not. */
  @Test
  void judgingRunsNoRuleAgain() {
    Document document = Document.of("a.kettle", SYRUP.replace("book\"", "book\" until 2026-12-31"));
    Entry entry = document.entries().get(0);
    Snapshot before = snapshot(List.of(document), LocalDate.of(2026, 12, 31));
    assertEquals(List.of(), Rules.of(before, entry));
    List<Finding> told = Rules.told(entry).ask(before);
    Snapshot after = before.with(before.library(), LocalDate.of(2027, 1, 1));
    assertEquals(2, Rules.of(after, entry).size());
    assertSame(told, Rules.told(entry).ask(after));
  }

  /** A verdict that no day decides is not asked for anew when one ends. */
  @Test
  void aDayChangesNothingWhereNoneIsWritten() {
    Document document = Document.of("a.kettle", SYRUP);
    Entry entry = document.entries().get(0);
    Snapshot before = snapshot(List.of(document), Today.DAY);
    Verdict verdict = Rules.judged(before, entry);
    assertSame(verdict, Rules.judged(before.with(before.library(), Today.DAY.plusDays(1)), entry));
  }

  @Test
  void theOfferStandsInTheStageOfTheFinding() {
    assertOffer("""
        formula syrup
          percent of charge
        stage pan
          50 white-sugar
          50 % water
          mix  # well

        stage bowl
          all of pan
          mix
        """, "missing-unit", """
        formula syrup
          percent of charge
        stage pan
          50 white-sugar
          50 % water
          mix  # well
          accept    missing-unit "reason"

        stage bowl
          all of pan
          mix
        """);
  }

  @Test
  void theOfferStandsAmongTheFactsForAllElse() {
    assertOffer(
        SYRUP.replace("  accept total-off \"as in the old book\"\n", ""),
        "total-off",
        SYRUP
            .replace("as in the old book", "reason")
            .replace("accept total-off", "accept    total-off"));
  }

  @Test
  void whatHasNoAcceptancesGetsNoOffer() {
    String text = "house quay\n  threshold total-tolerence 1 %\n";
    Entry entry = entries(text).get(0);
    Finding finding = judged(text, Today.DAY, 0).shown().get(0);
    assertEquals(Optional.empty(), Acceptances.offer(entry, finding));
  }

  /** An offer is taken, its reason written, and the finding is gone. */
  private static void assertOffer(String text, String rule, String expected) {
    Entry entry = entries(text).get(0);
    Finding finding = judged(text, Today.DAY, 0).shown().stream()
        .filter(found -> found.rule().id().equals(rule))
        .findFirst()
        .orElseThrow();
    List<TextEdit> edits = Acceptances.offer(entry, finding).orElseThrow().edits();
    String offered = Document.of("a.kettle", text).text().source().with(edits).text();
    assertEquals(expected, offered);
    assertTrue(shown(offered, Today.DAY).contains("unfilled-reason"));
    String filled = offered.replace("\"reason\"", "\"it is wanted\"");
    assertTrue(!shown(filled, Today.DAY).contains(rule), filled);
  }

  private static List<String> sorted(String text) {
    return shown(text, Today.DAY).stream().sorted().toList();
  }

  private static List<String> shown(String text, LocalDate day) {
    List<Entry> entries = entries(text);
    Snapshot snapshot = snapshot(List.of(Document.of("a.kettle", text)), day);
    List<String> shown = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      judged(snapshot, i).shown().forEach(finding -> shown.add(finding.rule().id()));
    }
    return shown;
  }

  private static List<Verdict.Accepted> accepted(String text, LocalDate day, int section) {
    return judged(text, day, section).accepted();
  }

  private static Verdict judged(String text, LocalDate day, int section) {
    return judged(snapshot(List.of(Document.of("a.kettle", text)), day), section);
  }

  private static Verdict judged(Snapshot snapshot, int section) {
    Document document = snapshot.library().document("a.kettle").orElseThrow();
    return Rules.judged(snapshot, document.entries().get(section));
  }

  private static List<Entry> entries(String text) {
    return Document.of("a.kettle", text).entries();
  }

  private static Snapshot snapshot(List<Document> documents, LocalDate day) {
    List<Document> all = new ArrayList<>(Pantry.documents());
    all.addAll(documents);
    return Snapshot.of(Library.of(all), day);
  }
}
