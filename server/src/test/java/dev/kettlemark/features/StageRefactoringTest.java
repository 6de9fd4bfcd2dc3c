package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.analysis.ComputedFormula;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Stages and formulas taken out of a formula and worked in again; the grams of each material stay. */
class StageRefactoringTest {

  private static final String GEL = """
      formula gel "Rose gel"
        percent   of charge
        batch     1000 g
        texture   soft

      stage pot
         2.00 %             gelatine-200     # soaked first
        12.00 %             water            at 12-18 °C
        60.00 %             invert-syrup
        26.00 %             orange-juice
        sprinkle  gelatine-200 into water
        soak      gelatine-200 for 20 min until bloomed
        mix       invert-syrup, orange-juice, gelatine-200, water
        warm      to 60 °C for 5 min until dissolved
      """;

  private static final String TWO = """
      formula gel "Rose gel"
        percent   of charge
        batch     1000 g

      # Soaked cold.
      stage bloom
         2.00 %             gelatine-200
        12.00 %             water
        sprinkle  gelatine-200 into water
        soak      for 20 min until bloomed

      stage pot
        86.00 %             invert-syrup
        all of              bloom
        mix       invert-syrup, bloom
      """;

  private static final String PART = """
      formula paste "Almond paste"
        percent   of charge
        batch     500 g

      stage grind
        60.00 %             roasted-almond
        40.00 %             honey            # from the hill
        mix       roasted-almond, honey

      formula filling "Filling"
        percent   of charge
        batch     1000 g

      stage bowl
        30.00 %             paste
        70.00 %             almond-butter
        mix       paste, almond-butter
      """;

  private static Map<String, Double> grams(ComputedFormula formula) {
    Map<String, Double> grams = new TreeMap<>();
    formula
        .amounts()
        .lines()
        .forEach(line -> grams.merge(
            line.line().ingredient().value(),
            formula.amounts().grams(line).map(BigFraction::doubleValue).orElse(Double.NaN),
            Double::sum));
    return grams;
  }

  private static double weight(ComputedFormula formula, String material) {
    return grams(formula).getOrDefault(material, Double.NaN);
  }

  private static void assertSameGrams(String before, String after, String name) {
    Map<String, Double> old = grams(RefactoringFixture.formula(before, name));
    Map<String, Double> now = grams(RefactoringFixture.formula(after, name));
    assertEquals(old.keySet(), now.keySet());
    old.forEach((material, weight) ->
        assertEquals(weight, now.getOrDefault(material, Double.NaN), 1e-6, material));
  }

  private static String refusal(List<Refactoring> found) {
    return found.stream().flatMap(one -> one.refused().stream()).findFirst().orElse("");
  }

  @Test
  void makesAStageOfSelectedLines() {
    RefactoringFixture fixture = RefactoringFixture.of(
        GEL.replace("   2.00 %", "<[>   2.00 %").replace("  60.00 %", "<]>  60.00 %"));
    List<Refactoring> found = ExtractStageRefactoring.at(fixture.site());
    assertEquals(
        "Make a stage of the selected lines: pot-part, 14.00 % of the charge",
        found.get(0).title());
    String after = fixture.applied(found, "Make a stage");
    assertEquals("""
        formula gel "Rose gel"
          percent   of charge
          batch     1000 g
          texture   soft

        stage pot-part
           2.00 %             gelatine-200  # soaked first
          12.00 %             water                at 12-18 °C
          sprinkle  gelatine-200 into water
          soak      gelatine-200 for 20 min until bloomed

        stage pot
          60.00 %             invert-syrup
          26.00 %             orange-juice
          all of              pot-part
          mix       invert-syrup, orange-juice, pot-part
          warm      to 60 °C for 5 min until dissolved
        """, Formatter.format(after));
    assertSameGrams(GEL, after, "gel");
    RefactoringFixture back = RefactoringFixture.at(after, "stage pot-part");
    assertSameGrams(
        GEL, back.applied(InlineStageRefactoring.at(back.site()), "Work stage pot-part"), "gel");
  }

  @Test
  void saysWhyNoStageCanBeMade() {
    RefactoringFixture idle = RefactoringFixture.of(
        GEL.replace("  60.00 %", "<[>  60.00 %").replace("  sprinkle", "<]>  sprinkle"));
    assertEquals(
        "no step works on the selected amounts alone",
        refusal(ExtractStageRefactoring.at(idle.site())));
    RefactoringFixture parent =
        RefactoringFixture.of((GEL + "\nvariant gel-two of gel\n  batch 900 g\n")
            .replace("   2.00 %", "<[>   2.00 %")
            .replace("  60.00 %", "<]>  60.00 %"));
    assertEquals(
        "variant `gel-two` is made of these stages",
        refusal(ExtractStageRefactoring.at(parent.site())));
  }

  @Test
  void worksAStageIntoTheOneThatTakesIt() {
    RefactoringFixture fixture = RefactoringFixture.at(TWO, "stage bloom");
    String after =
        fixture.applied(InlineStageRefactoring.at(fixture.site()), "Work stage bloom into pot");
    assertEquals("""
        formula gel "Rose gel"
          percent   of charge
          batch     1000 g

        # Soaked cold.
        stage pot
           2.00 %             gelatine-200
          12.00 %             water
          86.00 %             invert-syrup
          sprinkle  gelatine-200 into water
          soak      gelatine-200 for 20 min until bloomed
          mix       invert-syrup, gelatine-200
        """, after);
    assertSameGrams(TWO, after, "gel");
  }

  @Test
  void saysWhyAStageCannotBeWorkedIn() {
    RefactoringFixture vessel =
        RefactoringFixture.at(TWO.replace("stage bloom", "stage bloom in bowl-a"), "stage bloom");
    assertEquals("it is made in another vessel", refusal(InlineStageRefactoring.at(vessel.site())));
    RefactoringFixture shared = RefactoringFixture.at(
        TWO.replace("86.00 %             invert-syrup", "86.00 %             water"),
        "stage bloom");
    assertEquals(
        "both stages hold `water`, and a step could not tell them apart",
        refusal(InlineStageRefactoring.at(shared.site())));
    RefactoringFixture measured = RefactoringFixture.at(
        TWO + "\ntrial T-1 of gel\n  measured 140 g weight of bloom\n", "stage bloom");
    assertEquals(
        "`T-1` speaks of stage `bloom`", refusal(InlineStageRefactoring.at(measured.site())));
  }

  @Test
  void makesAFormulaOfAStage() {
    RefactoringFixture fixture = RefactoringFixture.at(TWO, "stage bloom");
    List<Refactoring> found = ExtractFormulaRefactoring.at(fixture.site());
    assertEquals(
        "Make a formula of stage bloom: bloom, 14.00 % weighed in again",
        found.get(0).title());
    String after = fixture.applied(found, "Make a formula");
    assertTrue(after.startsWith("""
        formula bloom

        stage bloom
           20 g               gelatine-200
          120 g               water
          sprinkle  gelatine-200 into water
        """), after);
    assertTrue(after.contains("  14.00 %             bloom\n"), after);
    assertTrue(after.contains("  mix       invert-syrup, bloom\n"), after);
    RefactoringFixture back = RefactoringFixture.at(after, "  14.00 %");
    String again = back.applied(
        InlineFormulaRefactoring.at(back.site()), "Write bloom out as stages: 1 stages");
    assertSameGrams(TWO, again, "gel");
  }

  /** What boils away is charged no longer, so the other lines are percentages of less. */
  @Test
  void keepsTheGramsBesideWhatBoilsAway() {
    String text = """
        formula candy "Candy"
          percent   of charge
          batch     1000 g
          caution   hot-sugar

        stage syrup
          40.00 %             white-sugar
          10.00 %             glucose-syrup-42
          20.00 %             water
          boil      under lid until dissolved
          cook      to 118 °C ± 1

        stage body
          30.00 %             roasted-almond
          all of              syrup
          mix       roasted-almond, syrup
        """;
    RefactoringFixture fixture = RefactoringFixture.at(text, "stage syrup");
    String after = fixture.applied(ExtractFormulaRefactoring.at(fixture.site()), "Make a formula");
    assertTrue(after.contains(" syrup                at 118 °C\n"), after);
    ComputedFormula whole = RefactoringFixture.formula(after, "candy");
    assertEquals(300, weight(whole, "roasted-almond"), 1e-6);
    ComputedFormula before = RefactoringFixture.formula(text, "candy");
    assertEquals(
        before
            .process()
            .stages()
            .get(0)
            .left()
            .mass()
            .toOptional()
            .orElseThrow()
            .grams(),
        weight(whole, "syrup"),
        1e-5);
    assertEquals(
        "what boils away in it belongs to the yield that the formula expects",
        refusal(ExtractFormulaRefactoring.at(RefactoringFixture.at(
                text.replace("  caution", "  expect    yield 80 % ± 9\n  caution"), "stage syrup")
            .site())));
    String line = after.lines().filter(l -> l.contains("at 118")).findFirst().orElseThrow();
    RefactoringFixture taken = RefactoringFixture.at(after, line);
    String again =
        taken.applied(InlineFormulaRefactoring.at(taken.site()), "Write syrup out as stages");
    assertSameGrams(text, again, "candy");
  }

  @Test
  void writesAFormulaOutAsStages() {
    RefactoringFixture fixture = RefactoringFixture.at(PART, "  30.00 %");
    String after =
        fixture.applied(InlineFormulaRefactoring.at(fixture.site()), "Write paste out as stages");
    assertTrue(after.endsWith("""
        stage grind
          18.00 %             roasted-almond
          12.00 %             honey  # from the hill
          mix       roasted-almond, honey

        stage bowl
          70.00 %             almond-butter
          all of              grind
          mix       grind, almond-butter
        """), after);
    ComputedFormula filling = RefactoringFixture.formula(after, "filling");
    assertEquals(180, weight(filling, "roasted-almond"), 1e-9);
    assertEquals(120, weight(filling, "honey"), 1e-9);
  }

  @Test
  void saysWhyAFormulaCannotBeWrittenOut() {
    RefactoringFixture fixture =
        RefactoringFixture.at(PART.replace("stage bowl", "stage grind"), "  30.00 %");
    assertEquals(
        "both formulas have a `grind`", refusal(InlineFormulaRefactoring.at(fixture.site())));
  }
}
