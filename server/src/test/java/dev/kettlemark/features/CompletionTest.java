package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class CompletionTest {

  private static final String LIBRARY = """
      house quay "Quay kitchen"
        bowl      bowl-5  holds 4.8 L
        frame     slab-400  measures 400 x 300 x 15 mm
        mould     dome-24  has 24 pieces of 9.5 mL

      formula nougat "Plain nougat"
        percent   of charge

      stage foam
         2.00 % egg-white-powder
         q.s.   water
        whip until soft-peak

      stage syrup
        40.00 % white-sugar
        20.00 % honey
        10.00 % water
        cook to 140 °C

      stage body
        all of foam
        all of syrup
        stream syrup into foam
      """;

  private static final String STAGE = """
      formula glaze "Glaze"
        basis     liquid = water in syrup

      stage syrup
         2.00 %  pectin-hm-slow
        30.00 %  white-sugar
        20.00 %  water
        blend    pectin-hm-slow, white-sugar until lump-free
      """;

  private final CompletionFixture completion = CompletionFixture.with(LIBRARY);

  @Test
  void offersMaterialsBehindAnAmountMostUsedFirst() {
    completion.check(
        "formula b\nstage c\n  3 % <|>", "water", "egg-white-powder", "honey", "white-sugar");
  }

  @Test
  void offersWhatTheStageHasAlreadyLast() {
    List<String> labels = completion.labels("formula b\nstage c\n  2 % water\n  3 % <|>");
    assertEquals("water", labels.get(labels.size() - 1));
  }

  @Test
  void neverOffersAFormulaForItself() {
    assertFalse(completion.labels("formula b\nstage c\n  3 % <|>").contains("b"));
    assertTrue(completion.labels("formula b\nstage c\n  3 % <|>").contains("nougat"));
  }

  @Test
  void tellsTheUseRangeOfAMaterial() {
    Proposal xanthan = completion.proposal("formula b\nstage c\n  3 % <|>", "xanthan-gum");
    assertTrue(xanthan.detail().matches("[0-9.]+–[0-9.]+ % of \\S+.* · .+"), xanthan.detail());
    assertTrue(xanthan.documentation().contains("Usual: "), xanthan.documentation());
  }

  @Test
  void offersMaterialsBehindABasis() {
    completion.check("formula b\nstage c\n  3 % of liquid <|>", "water");
  }

  @Test
  void offersUnitsBehindAFigure() {
    completion.check("formula b\nstage c\n  3 <|>", "%", "ppm", "kg", "g");
    completion.check(STAGE + "  boil for 3 <|>", "s", "min", "h");
    completion.check(STAGE + "  cook to 118 <|>", "°C", "°F");
  }

  @Test
  void offersBasesBehindOf() {
    completion.checkAll(
        STAGE + "  0.40 % of <|>",
        "charge",
        "finished",
        "liquid",
        "syrup",
        "pectin-hm-slow",
        "white-sugar",
        "water");
  }

  @Test
  void offersUnusedNamesBehindAVerb() {
    completion.check(STAGE + "  mix <|>", "water", "pectin-hm-slow", "white-sugar", "for");
    completion.check(STAGE + "  mix water, <|>", "water", "pectin-hm-slow", "white-sugar");
  }

  @Test
  void offersClausesBehindAName() {
    completion.check(STAGE + "  mix water <|>", "for", "until", "while", "to", "over");
    completion.check(STAGE + "  cook water <|>", "to", "until", "at", "while", "for");
  }

  @Test
  void offersTheStatesThatAVerbLeadsToFirst() {
    completion.check(STAGE + "  whip until <|>", "foam", "soft-peak", "firm-peak", "stiff-peak");
    completion.check(STAGE + "  soak until <|>", "bloomed");
    completion.check(STAGE + "  boil for 2 min until <|>", "hydrated", "dissolved", "clear");
    assertEquals(
        "clear on the spoon, no crystals on the wall",
        completion.proposal(STAGE + "  boil until <|>", "dissolved").detail());
  }

  @Test
  void offersSugarStagesInBothScalesBehindCookTo() {
    completion.check(STAGE + "  cook to <|>", "104 °C", "106 °C", "110 °C", "112 °C", "118 °C");
    // Firm ball: 118 °C and, as printed, 244 °F (McGee 2004, On Food and Cooking, syrup stages).
    Proposal firm = completion.proposal(STAGE + "  cook to <|>", "118 °C");
    assertEquals("firm ball · 244 °F", firm.detail());
    assertTrue(firm.documentation().contains("burns deeply"));
    assertFalse(completion.labels(STAGE + "  cook to <|>").contains("190 °C"));
    completion.checkInserted("stage a\n  cook to 11<|>", "118 °C", "stage a\n  cook to 118 °C");
  }

  @Test
  void offersWhatThePantrySaysBehindWarmTo() {
    String gelatine = "formula b\nstage c\n  2 % gelatine-250\n  warm to <|>";
    assertFalse(completion.labels(gelatine).isEmpty());
    assertTrue(completion.labels(gelatine).stream().allMatch(label -> label.endsWith(" °C")));
  }

  @Test
  void offersPlacesBehindInto() {
    completion.check(
        STAGE + "  sprinkle pectin-hm-slow into <|>", "water", "pectin-hm-slow", "white-sugar");
    completion.check(STAGE + "  deposit water into <|>", "slab-400", "dome-24");
  }

  @Test
  void offersSpeedsAndLids() {
    completion.checkAll(STAGE + "  whip on <|>", "low", "medium", "high");
    completion.checkAll(STAGE + "  warm on <|>", "water-bath", "direct-heat");
    completion.checkAll(STAGE + "  warm while whisking on <|>", "low", "medium", "high");
    completion.checkAll(
        STAGE + "  set on <|>", "low", "medium", "high", "water-bath", "direct-heat");
    completion.checkAll(STAGE + "  mix while <|>", "whisking", "stirring");
    completion.checkAll(STAGE + "  boil under <|>", "lid");
  }

  @Test
  void offersStagesNotTakenYetBehindAllOf() {
    completion.checkAll(
        LIBRARY.replace("formula nougat", "formula other") + """

        stage slab
          all of <|>
        """, "body", "foam", "syrup");
    completion.checkAll(STAGE + "\nstage end\n  part 1/2 of <|>", "syrup");
  }

  @Test
  void offersVerbsAtTheStartOfALine() {
    completion.check(STAGE + "  <|>", "weigh", "sift", "blend");
    List<String> labels = completion.labels(STAGE + "  <|>");
    assertTrue(labels.containsAll(List.of("all of", "q.s.", "note")), labels::toString);
    assertEquals("beat air in", completion.proposal(STAGE + "  wh<|>", "whip").detail());
  }

  @Test
  void offersTheRulesThatFindSomethingFirst() {
    completion.check("""
        formula a
          percent of charge
          accept <|>
        stage pan
          50 % white-sugar
          40 % water
          mix
        """, "total-off", "missing-unit");
    List<String> labels = completion.labels("formula a\n  accept <|>");
    assertFalse(labels.contains("unreadable-text"), labels::toString);
  }

  @Test
  void offersTheThresholdsOfAHouse() {
    completion.check("house a\n  threshold <|>", "total-tolerance", "small-powder-dose");
  }

  @Test
  void offersFactsNotWrittenYetFirst() {
    completion.check("formula a\n  accept 1\n  batch 1 g\n  <|>", "author", "basis", "caution");
    completion.check("variant a of nougat\n  <|>", "accept", "add", "author");
    completion.check("sheet a of nougat\n  <|>", "makes", "note", "show");
  }

  @Test
  void offersSectionsAtTheMargin() {
    completion.checkAll(
        "<|>", "formula", "variant", "ingredient", "product", "trial", "sheet", "house");
    completion.check(STAGE + "<|>", "stage", "formula");
    assertTrue(completion.proposal("<|>", "formula").isSnippet());
  }

  @Test
  void offersTheWordsOfAList() {
    completion.check("formula a\n  status <|>", "draft", "bench");
    completion.check("formula a\n  texture <|>", "brittle", "hard", "chewy");
    completion.check("formula a\n  claim <|>", "vegan");
    completion.check("formula a\n  caution <|>", "hot-sugar");
    completion.check("house a\n  market EU, <|>", "EU", "US");
    completion.check("ingredient a\n  role <|>", "sweetening");
    completion.check("ingredient a\n  form <|>", "liquid");
    completion.check("ingredient a\n  suits <|>", "vegan");
    completion.check("ingredient a\n  allergen milk, <|>", "egg");
    completion.check("ingredient a\n  contains 5 % <|>", "water", "sucrose");
    completion.checkAll("formula a\n  status bench <|>");
  }

  @Test
  void offersFormulasWhereOneIsNamed() {
    completion.checkAll("variant a of <|>", "nougat");
    completion.checkAll("trial T-1 of <|>", "nougat");
    completion.check("product a\n  centre 18 g <|>", "nougat");
    completion.check("trial T-1 of nougat\n  measured 3 g <|>", "aw", "density", "end");
    completion.checkAll(
        "trial T-1 of nougat\n  measured 3 g weight of <|>", "foam", "syrup", "body");
    completion.checkAll("trial T-1 of nougat on 2026-01-01 at <|>", "quay");
    completion.checkAll("formula a\nstage b in <|>", "bowl-5");
  }

  @Test
  void offersWhatTheParentHasInAVariant() {
    String variant = "variant b of nougat\n";
    completion.checkAll(
        variant + "  replace <|>", "egg-white-powder", "water", "white-sugar", "honey");
    completion.check(variant + "  replace honey by 5 % <|>", "water");
    completion.checkAll(variant + "  replace honey by <|>", "20.00 %");
    completion.checkAll(variant + "  replace gum-of-nobody by <|>");
    completion.checkAll(variant + "  add 5 % honey in <|>", "foam", "syrup", "body");
    completion.checkAll(variant + "stage <|>", "foam", "syrup", "body");
    completion.check(variant + "  withdraw caution <|>", "hot-sugar");
  }

  @Test
  void replacesTheWholeWordUnderTheCursor() {
    completion.checkInserted(
        "formula b\nstage c\n  3 % glu-sy<|>rup-4 at 20 °C\n",
        "white-sugar", "formula b\nstage c\n  3 % white-sugar at 20 °C\n");
    completion.checkInserted(
        "formula b\nstage c\n  3 % egg-white-<|>", "honey", "formula b\nstage c\n  3 % honey");
  }

  @Test
  void worksBesideErrors() {
    completion.check("formula °C\n 1,200 g ?\nstage c ±\n  \"open\n  3 % <|> ± ?", "water");
    completion.check(STAGE + "  mix ? <|>", "for");
  }

  @Test
  void offersNothingInCommentsAndQuotes() {
    completion.checkAll("formula a  # of <|>");
    completion.checkAll("formula a\n  note \"until <|>\"");
    completion.checkAll("formula a\n  note \"until <|>");
  }

  @Test
  void answersAtEveryPlaceOfTheSamples() throws IOException {
    List<Document> documents = new ArrayList<>(Pantry.documents());
    for (Path file : samples()) {
      documents.add(Document.of(file.toString(), Files.readString(file)));
    }
    Snapshot snapshot = Snapshot.of(Library.of(documents));
    int answered = 0;
    for (Document document : snapshot.library().ownDocuments()) {
      for (int offset = 0; offset <= document.text().source().length(); offset += 7) {
        List<Proposal> proposals = Completion.at(snapshot, document, offset);
        assertEquals(
            proposals.size(),
            new HashSet<>(proposals.stream().map(Proposal::label).toList()).size());
        for (Proposal proposal : proposals) {
          assertTrue(proposal.replaced().touches(offset));
        }
        answered += proposals.isEmpty() ? 0 : 1;
      }
    }
    assertTrue(answered > 500, "answered " + answered);
  }

  private static List<Path> samples() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("../samples/gannet-slip"))) {
      return files.sorted().toList();
    }
  }

  @Test
  void startsANameWhereTheOthersOfItsStageStart() {
    completion.checkInserted(
        "formula b\nstage c\n   1.00 %             agar\n  12 % wa<|>",
        "water", "formula b\nstage c\n   1.00 %             agar\n  12 %                water");
    completion.checkInserted(
        "formula b\nstage c\n  12 % wa<|>", "water", "formula b\nstage c\n  12 % water");
    completion.checkInserted(
        "formula b\n  basis dry = agar\nstage c\n   1.00 %             agar\n  12 % of <|>",
        "dry", "formula b\n  basis dry = agar\nstage c\n   1.00 %             agar\n  12 % of dry");
  }

  @Test
  void offersWhatIsNoLongerSoldBehindAllElse() {
    CompletionFixture fixture = CompletionFixture.with(
        "ingredient aa-old\n  status discontinued\nformula f\nstage s\n  1 g aa-old\n  1 g aa-old\n");
    Proposal old = fixture.proposal("formula b\nstage c\n  3 % <|>", "aa-old");
    assertTrue(old.isPast());
    List<String> labels = fixture.labels("formula b\nstage c\n  3 % <|>");
    assertEquals("aa-old", labels.get(labels.size() - 1));
  }

  /** At least 95 of 100 places behind a line that cannot be read have the offers of the sound text. */
  @Test
  void offersTheSameBelowALineThatCannotBeRead() throws IOException {
    List<Document> samples = FeatureFixture.samples("gannet-slip");
    Snapshot sound = FeatureFixture.snapshot(samples);
    int same = 0;
    int asked = 0;
    for (Document document : samples) {
      String text = document.text().source().text();
      int second = text.indexOf("\n  ") + 1;
      for (String damage : List.of("  ???\n", "  note \"open\n", "  5 %\n", "  12,5 % x y\n")) {
        Document broken = document.with(new TextEdit(Span.at(second), damage));
        Snapshot damaged = sound.with(sound.library().with(broken));
        for (int offset = second; offset < text.length(); offset += 23) {
          List<String> wanted = offered(sound, document, offset);
          asked++;
          same += wanted.equals(offered(damaged, broken, offset + damage.length())) ? 1 : 0;
        }
      }
    }
    assertTrue(asked > 1000, asked + " places");
    assertTrue(same >= 0.95 * asked, same + " of " + asked);
  }

  private static List<String> offered(Snapshot snapshot, Document document, int offset) {
    return Completion.at(snapshot, document, offset).stream()
        .map(Proposal::label)
        .toList();
  }
}
