package dev.kettlemark.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Chance;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.hipparchus.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Amounts against hand calculation, exactly: no tolerance anywhere but where a yield is searched. */
class AmountSystemTest {

  private static final List<Document> PANTRY = Pantry.documents();

  /**
   * Hand calculation: the rest is water w = 1 − 0.60 − g, and the gum g = 0.0040·w. So
   * w = 0.40 − 0.0040·w, w = 0.40 / 1.0040 = 100/251 and g = 0.4/251 = 2/1255.
   */
  @Test
  void solvesAGumOfTheLiquidThatIsTheRest() {
    Amounts amounts = amounts("""
        basis liquid = water
        stage pan
          60.00 % white-sugar
          0.40 % of liquid guar-gum
          q.s. water
        """);
    assertShare(100, 251, amounts, "water");
    assertShare(2, 1255, amounts, "guar-gum");
    assertEquals(BigFraction.ONE, amounts.total());
  }

  /** Only the water of the foam counts: w₁ = 5 %, so the gum is 0.30 % of 5 % = 3/20 000. */
  @Test
  void countsAMemberInItsOwnStageOnly() {
    Amounts amounts = amounts("""
        basis liquid = water in foam
        stage foam
          5 % water
          0.30 % of liquid xanthan-gum
        stage syrup
          60 % white-sugar
          q.s. water
        """);
    assertShare(3, 20_000, amounts, "xanthan-gum");
    assertEquals(BigFraction.ONE, amounts.total());
  }

  /** 2 % of a stage of 30 % sugar and 10 % water: 0.02·0.40 = 1/125. */
  @Test
  void takesAStageAsABasis() {
    Amounts amounts = amounts("""
        stage syrup
          30 % white-sugar
          10 % water
        stage body
          2 % of syrup sea-salt
          q.s. honey
          all of syrup
        """);
    assertShare(1, 125, amounts, "sea-salt");
  }

  /** A stage that took half of another counts half of it: 0.10·(0.20 + 0.40/2) = 1/25. */
  @Test
  void countsWhatAStageTook() {
    Amounts amounts = amounts("""
        stage syrup
          40 % white-sugar
        stage body
          20 % honey
          part 1/2 of syrup
        stage end
          10 % of body sea-salt
          q.s. water
          all of body
        """);
    assertShare(1, 25, amounts, "sea-salt");
  }

  /** 7 % of the sugar's 50 % is 3.5 %. */
  @Test
  void takesAnIngredientAsABasis() {
    Amounts amounts = amounts("""
        stage pan
          50 % white-sugar
          7 % of white-sugar citric-acid
          q.s. water
        """);
    assertShare(7, 200, amounts, "citric-acid");
    assertShare(93, 200, amounts, "water");
  }

  /** A dry mix of 20 %; its gum is 5 % of it, 1 %; the salt is 10 % of the gum, 0.1 %. */
  @Test
  void followsBasesThatHangOnBases() {
    Amounts amounts = amounts("""
        basis dry = white-sugar
        basis thick = guar-gum
        stage pan
          10 % of thick sea-salt
          5 % of dry guar-gum
          20 % white-sugar
          q.s. water
        """);
    assertShare(1, 100, amounts, "guar-gum");
    assertShare(1, 1000, amounts, "sea-salt");
  }

  /**
   * A circle that has a solution: a is 50 % of {a, b}, and b is 20 % of charge, so
   * a = (a + 1/5)/2 and a = 1/5.
   */
  @Test
  void solvesACircleThatHasASolution() {
    Amounts amounts = amounts("""
        basis both = honey, water
        stage pan
          50 % of both honey
          20 % water
        """);
    assertShare(1, 5, amounts, "honey");
    assertTrue(amounts.solved());
  }

  /** Two that hang on each other: h = w/2, w = 1/10 + h/2, so w = 2/15 and h = 1/15. */
  @Test
  void solvesTwoAmountsThatHangOnEachOther() {
    Amounts amounts = amounts("""
        basis wet = water, milk
        stage pan
          50 % of wet honey
          50 % of honey milk
          10 % water
        """);
    assertShare(1, 15, amounts, "honey");
    assertShare(1, 30, amounts, "milk");
  }

  /** h = {h, w} with w = 20 %: no amount of honey is 100 % of itself and more. */
  @Test
  void hasNoAnswerForACircleWithoutSolution() {
    Amounts amounts = amounts("""
        basis both = honey, water
        stage pan
          100 % of both honey
          20 % water
        """);
    assertFalse(amounts.solved());
    assertEquals(Reason.CONTRADICTION, reason(amounts, "honey"));
    assertShare(1, 5, amounts, "water");
  }

  @Test
  void hasNoAnswerForTwoRests() {
    Amounts amounts = amounts("""
        stage pan
          20 % honey
          q.s. water
          q.s. milk
        """);
    assertFalse(amounts.solved());
    assertEquals(Reason.CONTRADICTION, reason(amounts, "water"));
  }

  @Test
  void hasNoAnswerForABasisThatNobodyDeclared() {
    Amounts amounts = amounts("""
        stage pan
          20 % of nothing honey
          50 % water
        """);
    assertEquals(Reason.MISSING_FIGURE, reason(amounts, "honey"));
    assertShare(1, 2, amounts, "water");
  }

  /** Percent of sugar: 100 + 25 parts of sugar and water are 4/5 and 1/5 of the whole. */
  @Test
  void closesAFormulaWhosePercentagesAreOfAnIngredient() {
    Amounts amounts = amounts("""
        percent of white-sugar
        stage pan
          100 % white-sugar
          25 % water
        """);
    assertShare(4, 5, amounts, "white-sugar");
    assertShare(1, 5, amounts, "water");
  }

  /** Two sugars that make up the 100 % together: 60 + 40 + 25 parts. */
  @Test
  void closesAFormulaWhosePercentagesAreOfTwoIngredientsTogether() {
    Amounts amounts = amounts("""
        percent of sugars
        basis sugars = white-sugar, honey
        stage pan
          60 % white-sugar
          40 % honey
          25 % water
        """);
    assertShare(12, 25, amounts, "white-sugar");
    assertShare(8, 25, amounts, "honey");
    assertEquals(BigFraction.ONE, amounts.total());
  }

  /** 300 g, 150 g and 1/2 lb = 226.796185 g (exact: NIST SP 811, appendix B.8). */
  @Test
  void addsUpWeights() {
    Amounts amounts = amounts("""
        stage pan
          300 g white-sugar
          150 g water
          1/2 lb honey
        """);
    BigFraction total = new BigFraction(676_796_185, 1_000_000);
    assertEquals(total, amounts.charge().orElseThrow());
    assertEquals(new BigFraction(150).divide(total), amounts.shareOf("water"));
    assertEquals(BigFraction.ONE, amounts.total());
  }

  /** A house ingredient of 1.25 g/mL: 100 mL weigh 125 g, a quarter of the batch of 500 g. */
  @Test
  void weighsAVolumeByItsDensity() {
    Amounts amounts = amounts("""
        batch 500 g
        stage pan
          100 mL thick-syrup
          q.s. water
        ingredient thick-syrup
          contains 80 % sucrose, 20 % water
          density 1.25 g/mL
        """);
    assertShare(1, 4, amounts, "thick-syrup");
    assertShare(3, 4, amounts, "water");
  }

  @Test
  void doesNotGuessAWeightWithoutADensity() {
    Amounts amounts = amounts("""
        batch 500 g
        stage pan
          100 mL unknown-syrup
          50 % water
        """);
    assertEquals(Reason.MISSING_FIGURE, reason(amounts, "unknown-syrup"));
  }

  /** A weight among percentages is taken of the batch: 60 g of 1200 g is 1/20. */
  @Test
  void takesAWeightAmongPercentagesOfTheBatch() {
    Amounts amounts = amounts("""
        batch 1200 g
        stage pan
          60 g honey
          q.s. water
        """);
    assertShare(1, 20, amounts, "honey");
  }

  /** Nothing boils: what is finished is the charge, and 2 % of it are 2 % of the charge. */
  @Test
  void takesFinishedForChargeWhereNothingBoils() {
    assertShare(1, 50, amounts("""
        stage pan
          2 % of finished sea-salt
          q.s. honey
        """), "sea-salt");
  }

  /** The condition itself is checked: the salt is 2 % of what the formula yields, not of its charge. */
  @Test
  void takesAShareOfWhatIsLeftAfterCooking() {
    ComputedFormula formula = computed("""
        stage pan
          50 % white-sugar
          2 % of finished sea-salt
          q.s. water
          cook to 110 °C
        """);
    double salt = formula.amounts().shareOf("sea-salt").doubleValue();
    double yield = formula.process().yieldShare().toOptional().orElseThrow().fraction();
    assertTrue(yield < 0.75, "yield " + yield);
    assertEquals(0.02 * yield, salt, 1e-8);
    assertEquals(BigFraction.ONE, formula.amounts().total());
  }

  @Test
  void refusesMoreBasesThanAnyBenchHas() {
    StringBuilder text = new StringBuilder("stage pan\n  q.s. water\n");
    for (int i = 0; i < 60; i++) {
      text.append("  1 % of i" + (i + 1) + " i" + i + "\n");
    }
    assertFalse(amounts(text.toString()).solved());
  }

  @Test
  void addsUpToOneWhereOneLineIsTheRest() {
    Chance.rounds(150, random -> {
      Amounts amounts = amounts(stage(randomLines(random)));
      assertTrue(amounts.solved());
      assertEquals(BigFraction.ONE, amounts.total());
    });
  }

  @Test
  void doesNotDependOnTheOrderOfTheLines() {
    Chance.rounds(100, random -> {
      List<String> lines = randomLines(random);
      Amounts one = amounts(stage(lines));
      Collections.shuffle(lines, random);
      Amounts other = amounts(stage(lines));
      one.lines().forEach(line -> {
        String name = line.line().ingredient().value();
        assertEquals(one.shareOf(name), other.shareOf(name), name);
      });
    });
  }

  @Test
  void scalesWeightsWithTheBatchAndLeavesTheShares() {
    Chance.rounds(50, random -> {
      String stage = stage(randomLines(random));
      Amounts small = amounts("batch 700 g\n" + stage);
      Amounts large = amounts("batch 2100 g\n" + stage);
      for (int line = 0; line < small.lines().size(); line++) {
        assertEquals(small.lines().get(line).share(), large.lines().get(line).share());
        assertEquals(
            small.grams(small.lines().get(line)).orElseThrow().multiply(3),
            large.grams(large.lines().get(line)).orElseThrow());
      }
    });
  }

  /** Lines of charge, of an ingredient and of a basis, together below the whole, and one rest. */
  private static List<String> randomLines(Random random) {
    List<String> lines = new ArrayList<>(List.of("q.s. water"));
    int count = 2 + random.nextInt(8);
    for (int i = 0; i < count; i++) {
      String figure = random.nextInt(9) + "." + (10 + random.nextInt(90)) + " % ";
      String basis = switch (random.nextInt(4)) {
        case 0 -> "of liquid ";
        case 1 -> "of item" + random.nextInt(count) + " ";
        default -> "";
      };
      lines.add(figure + basis + "item" + i);
    }
    return lines;
  }

  private static String stage(List<String> lines) {
    return "basis liquid = water, item0\nstage pan\n  " + String.join("\n  ", lines) + "\n";
  }

  private static void assertShare(int part, int of, Amounts amounts, String ingredient) {
    assertEquals(new BigFraction(part, of), amounts.shareOf(ingredient), ingredient);
  }

  private static Reason reason(Amounts amounts, String ingredient) {
    Outcome<BigFraction> share = amounts.lines().stream()
        .filter(line -> line.line().ingredient().value().equals(ingredient))
        .map(Amounts.LineAmount::share)
        .findFirst()
        .orElseThrow();
    return share.fold(
        known -> {
          throw new AssertionError(ingredient + " is known: " + known);
        },
        Outcome.Unknown::reason);
  }

  private static Amounts amounts(String body) {
    return computed(body).amounts();
  }

  private static ComputedFormula computed(String body) {
    Document document = Document.of("bench.kettle", "formula bench\n" + body);
    List<Document> all = new ArrayList<>(PANTRY);
    all.add(document);
    Snapshot snapshot = Snapshot.of(Library.of(all));
    return Formulas.computed(snapshot, document.entries().get(0)).orElseThrow();
  }
}
