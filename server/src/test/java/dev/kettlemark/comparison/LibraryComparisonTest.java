package dev.kettlemark.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class LibraryComparisonTest {

  private static final List<Document> PANTRY = Pantry.documents();

  private static final String SPEC = """
      ingredient bench-protein "Whipping protein"
        role      whipping
        form      powder
        contains  5.50 % water, 91.50 % protein, 3.00 % other  from "the supplier's sheet"
        suits     vegan, vegetarian
        gluten    no
      """;

  /** The supplier's new sheet: nine points less protein, and wetter. */
  private static final String WEAKER =
      SPEC.replace("5.50 % water, 91.50 % protein", "14.60 % water, 82.40 % protein");

  private static final String FOAM = """
      formula white-foam "White foam"
        percent   of charge
        batch     1000 g

      stage foam
         1.00 %             bench-protein
        60.00 %             white-sugar
        39.00 %             water
        whip      on high until soft-peak

      variant pale-foam "Pale foam" of white-foam
        replace   white-sugar by 60.00 % caster-sugar

      product drop "Drop"
        centre    5 g                 white-foam
        make      100 pieces

      formula plain-syrup "Plain syrup"
        percent   of charge
        batch     500 g

      stage pan
        50.00 %             white-sugar
        50.00 %             water
        mix       white-sugar, water
      """;

  private static Snapshot library(String... texts) {
    List<Document> documents = new ArrayList<>(PANTRY);
    for (int i = 0; i < texts.length; i++) {
      documents.add(Document.of("file:///" + i + ".kettle", texts[i]));
    }
    return Snapshot.of(Library.of(documents));
  }

  private static LibraryComparison compare(Snapshot before, Snapshot after) {
    return LibraryComparison.of(before, after);
  }

  private static ItemChange item(LibraryComparison comparison, String name) {
    return comparison.items().stream()
        .filter(item -> item.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError(name + " is not in " + comparison.items()));
  }

  /** {@code before → after} by the name of the figure. */
  private static Map<String, String> figures(ItemChange item) {
    Map<String, String> figures = new TreeMap<>();
    item.figures()
        .forEach(change -> figures.put(
            change.figure().name(),
            change.before().text() + " → " + change.after().text()));
    return figures;
  }

  private static List<String> names(LibraryComparison comparison) {
    return comparison.items().stream().map(ItemChange::name).toList();
  }

  @Test
  void saysThatNothingChanged() {
    LibraryComparison same = compare(library(SPEC, FOAM), library(SPEC, FOAM));
    assertTrue(same.isEmpty());
    assertEquals(List.of(), same.doses());
  }

  @Test
  void layoutCommentsAndFilesAreNoChange() {
    String laidOut = "# The foams.\n" + FOAM.replace("39.00 %             water", "39.00 % water");
    assertTrue(compare(library(SPEC, FOAM), library(laidOut + "\n" + SPEC)).isEmpty());
  }

  /** By hand: 1 % of it brings 9.1 points more water, 0.091 points of the mass. */
  @Test
  void followsANewSpecificationThroughVariantAndProduct() {
    LibraryComparison changed = compare(library(SPEC, FOAM), library(WEAKER, FOAM));
    assertEquals(List.of("white-foam", "pale-foam", "drop"), names(changed));
    for (ItemChange item : changed.items()) {
      assertTrue(item.causes().contains("bench-protein"), item.toString());
      assertEquals("39.1 % → 39.2 %", figures(item).get("moisture"), item.name());
    }
    assertEquals("variant", item(changed, "pale-foam").word());
    assertFalse(figures(item(changed, "white-foam")).containsKey("yield"));
    SectionEdit edit = changed.edits().get(0);
    assertEquals(1, changed.edits().size());
    assertEquals(SectionEdit.How.CHANGED, edit.how());
    assertEquals(
        List.of(false, true), edit.lines().stream().map(LineChange::added).toList());
  }

  /** By hand: 1.00 % · 91.5 / 82.4 = 1.1104 %, and 11.1 g in 1000 g; the variant only inherits the line. */
  @Test
  void tellsTheDoseOfEqualProtein() {
    List<KeptDose> doses = compare(library(SPEC, FOAM), library(WEAKER, FOAM)).doses();
    assertEquals(1, doses.size());
    KeptDose dose = doses.get(0);
    assertEquals("white-foam", dose.formula());
    assertEquals("protein", dose.measure());
    assertEquals(1.00, dose.now().percent(), 1e-9);
    assertEquals(1.1104, dose.kept().percent(), 5e-5);
    assertEquals(11.104, dose.keptGrams().orElseThrow().grams(), 5e-4);
  }

  /** By hand: root rule √(200/250) = 0.8944, linear 0.8; Gelatin Handbook (2012) for the root rule. */
  @Test
  void tellsTheDoseOfEqualBloomByBothRulesWhereTheyDisagree() {
    String leaf = """
        ingredient leaf "Leaf gelatine"
          role      gelling
          bloom     200
          contains  12 % water, 86 % protein, 2 % ash  from "the supplier's sheet"
        """;
    String gel = """
        formula gel "Gel"
          percent   of charge
          batch     1000 g

        stage soak
           2.00 %             leaf
          98.00 %             water
          soak      leaf, water for 20 min until bloomed
        """;
    LibraryComparison changed =
        compare(library(leaf, gel), library(leaf.replace("200", "250"), gel));
    KeptDose dose = changed.doses().get(0);
    assertEquals("bloom", dose.measure());
    assertEquals(1.7889, dose.kept().percent(), 5e-5);
    assertEquals(1.6, dose.otherwise().orElseThrow().percent(), 1e-9);
  }

  @Test
  void anIngredientThatNeitherWhipsNorGelsHasNoDoseToKeep() {
    String filler = SPEC.replace("whipping", "protein");
    String weaker = WEAKER.replace("role      whipping", "role      protein");
    assertEquals(
        List.of(), compare(library(filler, FOAM), library(weaker, FOAM)).doses());
  }

  @Test
  void tellsDosesInPercentAndGrams() {
    String sweeter = FOAM.replace(
            "60.00 %             white-sugar", "61.00 %             white-sugar")
        .replace("39.00 %             water", "38.00 %             water");
    Map<String, String> figures =
        figures(item(compare(library(SPEC, FOAM), library(SPEC, sweeter)), "white-foam"));
    assertEquals("60.00 % · 600.0 g → 61.00 % · 610.0 g", figures.get("foam: white-sugar"));
    assertEquals("39.00 % · 390.0 g → 38.00 % · 380.0 g", figures.get("foam: water"));
    assertFalse(figures.containsKey("foam: bench-protein"), figures.toString());
  }

  /** Almond is a tree nut of the law's own list; its caution follows from it. */
  @Test
  void tellsAnAllergenThatComesIn() {
    String nutty = FOAM.replace(
        "60.00 %             white-sugar",
        "55.00 %             white-sugar\n   5.00 %             roasted-almond");
    LibraryComparison changed = compare(library(SPEC, FOAM), library(SPEC, nutty));
    for (String name : List.of("white-foam", "drop")) {
      assertEquals(
          "not stated → contains", figures(item(changed, name)).get("allergen almond"), name);
    }
    assertTrue(
        item(changed, "white-foam").found().stream()
            .anyMatch(told -> told.rule().equals("missing-caution")),
        changed.items().toString());
  }

  @Test
  void tellsAClaimThatBreaks() {
    String claimed = FOAM.replace("batch     1000 g", "batch     1000 g\n  claim     vegan");
    String animal = SPEC.replace("suits     vegan, vegetarian", "suits     vegetarian");
    Map<String, String> figures =
        figures(item(compare(library(SPEC, claimed), library(animal, claimed)), "white-foam"));
    assertEquals("yes → no", figures.get("vegan"));
    assertEquals("holds → broken", figures.get("claim vegan (EU)"));
  }

  @Test
  void tellsFindingsThatComeAndGo() {
    String broken = FOAM.replace("39.00 %             water", "38.00 %             water");
    LibraryComparison worse = compare(library(SPEC, FOAM), library(SPEC, broken));
    assertTrue(
        item(worse, "white-foam").found().stream().anyMatch(t -> t.rule().equals("total-off")));
    LibraryComparison better = compare(library(SPEC, broken), library(SPEC, FOAM));
    assertTrue(
        item(better, "white-foam").mended().stream().anyMatch(t -> t.rule().equals("total-off")));
  }

  @Test
  void tellsWhatIsNewAndWhatIsGone() {
    String fewer = FOAM.substring(0, FOAM.indexOf("formula plain-syrup"));
    LibraryComparison gone = compare(library(SPEC, FOAM), library(SPEC, fewer));
    assertEquals(ItemChange.How.GONE, item(gone, "plain-syrup").how());
    LibraryComparison fresh = compare(library(SPEC, fewer), library(SPEC, FOAM));
    assertEquals(ItemChange.How.NEW, item(fresh, "plain-syrup").how());
    assertEquals(SectionEdit.How.NEW, fresh.edits().get(0).how());
  }

  @Test
  void anOwnEntryIsComparedWithTheBuiltInOneItOverrides() {
    String own = """
        ingredient white-sugar "Damp sugar"
          role      sweetening
          form      crystals
          contains  2.00 % water, 98.00 % sucrose  from "the supplier's sheet"
        """;
    LibraryComparison changed = compare(library(SPEC, FOAM), library(SPEC, FOAM, own));
    assertEquals(SectionEdit.How.OVERRIDES, changed.edits().get(0).how());
    assertTrue(names(changed).containsAll(List.of("white-foam", "drop", "plain-syrup")));
    assertFalse(names(changed).contains("pale-foam"));
  }

  @Test
  void aFigureNobodyKnowsAnyMoreSaysWhy() {
    String silent = SPEC.replaceAll("  contains.*\n", "");
    ItemChange item = item(compare(library(SPEC, FOAM), library(silent, FOAM)), "white-foam");
    FigureChange moisture = item.figures().stream()
        .filter(change -> change.figure().name().equals("moisture"))
        .findFirst()
        .orElseThrow();
    assertEquals("unknown", moisture.after().text());
    assertFalse(moisture.after().because().isEmpty());
  }

  @Test
  void circlesAreCompared() {
    String circle = """
        formula one
        stage a
          50 % two
          50 % water

        formula two
        stage a
          50 % one
          50 % water
        """;
    assertFalse(
        compare(library(circle), library(circle.replace("50 %", "40 %"))).isEmpty());
  }
}
