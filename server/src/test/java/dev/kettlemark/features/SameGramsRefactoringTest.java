package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Measure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.hipparchus.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Lines and formulas written otherwise weigh the same, by an account of their own. */
class SameGramsRefactoringTest {

  private static final String CANDY = """
      formula candy "Candy"
        percent   of charge
        batch     1000 g
        basis     liquid = water, rose-water
        texture   chewy
        caution   hot-sugar

      stage syrup
        70.00 %             white-sugar  # the fine one
         0.40 %             xanthan-gum
         q.s.               water
        boil      under lid until dissolved
        cook      to 127 °C ± 1

      stage body
         1.20 %             rose-water
        all of              syrup
        mix       rose-water, syrup
      """;

  private static final String WEIGHTS = """
      formula paste "Paste"
        batch     1000 g

      stage bowl
        600 g               roasted-almond
        350 g               honey
        500 mg              sea-salt
         49.5 g             water
        mix       roasted-almond, honey, sea-salt, water
      """;

  @Test
  void writesALineOnEveryBasisOfTheFormula() {
    RefactoringFixture fixture = RefactoringFixture.at(CANDY, " 0.40 %");
    List<Refactoring> found = BasisRefactoring.at(fixture.site());
    // Water is 100 − 70 − 0.40 − 1.20 = 28.40, liquid 28.40 + 1.20 = 29.60, and 0.40 / 29.60 of it.
    assertEquals(
        "Write as 1.3513514 % of liquid, the same grams of xanthan-gum",
        found.get(0).title());
    String after = fixture.applied(found, "Write as 1.3513514 % of liquid");
    assertTrue(after.contains("1.3513514 % of liquid  xanthan-gum\n"), after);
    assertTrue(after.contains("white-sugar  # the fine one\n"), after);
    RefactoringFixture there = RefactoringFixture.at(after, " 1.3513514 %");
    assertEquals(
        CANDY, there.applied(BasisRefactoring.at(there.site()), "Write as 0.40 % of charge"));
  }

  @Test
  void leavesPercentLinesFreeOfGramsAndWeightsOfPercent() {
    assertEquals(
        List.of(), UnitRefactoring.at(RefactoringFixture.at(CANDY, "70.00 %").site()));
    assertEquals(
        List.of(), BasisRefactoring.at(RefactoringFixture.at(WEIGHTS, "600 g").site()));
  }

  /** 0.5 g is 500 mg; one avoirdupois ounce is 28.349523125 g, NIST SP 811 (2008), appendix B.8. */
  @Test
  void writesAWeightInOtherUnits() {
    RefactoringFixture salt = RefactoringFixture.at(WEIGHTS, "500 mg");
    assertTrue(salt.applied(UnitRefactoring.at(salt.site()), "Write as 0.5 g")
        .contains("    0.5 g             sea-salt\n"));
    RefactoringFixture nuts = RefactoringFixture.at(WEIGHTS, "600 g");
    double ounces = Double.parseDouble(UnitRefactoring.at(nuts.site()).stream()
        .map(Refactoring::title)
        .filter(title -> title.contains(" oz"))
        .findFirst()
        .orElseThrow()
        .split(" ")[2]);
    assertEquals(600 / 28.349523125, ounces, 1e-7);
    // 350 g of honey of 1.42 g/mL.
    RefactoringFixture honey = RefactoringFixture.at(WEIGHTS, "350 g");
    String poured = honey.applied(UnitRefactoring.at(honey.site()), "Write as 24");
    assertTrue(poured.contains(" mL "), poured);
    assertEquals(
        350.0,
        RefactoringFixture.formula(poured, "paste")
            .amounts()
            .grams(RefactoringFixture.formula(poured, "paste").amounts().lines().get(1))
            .orElseThrow()
            .doubleValue(),
        1e-6);
  }

  @Test
  void writesAFormulaInWeightsAndBackInPercent() {
    String text = Formatter.format(CANDY.replace("q.s. ", "28.40 %"));
    RefactoringFixture fixture = RefactoringFixture.at(text, "percent");
    String weights = fixture.applied(WeightsRefactoring.at(fixture.site()), "Write all in weights");
    assertTrue(weights.contains("  700 g               white-sugar  # the fine one\n"), weights);
    assertTrue(weights.contains("    4 g               xanthan-gum\n"), weights);
    RefactoringFixture back = RefactoringFixture.at(weights, "batch");
    assertEquals(text, back.applied(WeightsRefactoring.at(back.site()), "Write all in percent"));
  }

  @Test
  void givesWeightsThePercentLinesThatTheyLack() {
    RefactoringFixture fixture =
        RefactoringFixture.at(WEIGHTS.replace("  batch     1000 g\n", ""), "600");
    String percent = fixture.applied(WeightsRefactoring.at(fixture.site()), "Write all in percent");
    assertTrue(percent.contains("  percent   of charge\n  batch     1000 g\n"), percent);
    assertTrue(percent.contains("  60.00 %             roasted-almond\n"), percent);
    assertTrue(percent.contains("   0.05 %             sea-salt\n"), percent);
  }

  @Test
  void declaresABasisAndUsesIt() {
    RefactoringFixture fixture = RefactoringFixture.at(
        CANDY.replace("  basis     liquid = water, rose-water\n", ""), " 0.40 %");
    String after =
        fixture.applied(DeclaredBasisRefactoring.at(fixture.site()), "Declare basis liquid");
    assertTrue(after.contains("  batch     1000 g\n  basis     liquid = water\n"), after);
    assertTrue(after.contains("1.4084507 % of liquid  xanthan-gum\n"), after);
    RefactoringFixture selected = RefactoringFixture.of(
        CANDY.replace("  70.00 %", "<[>  70.00 %").replace("   q.s. ", "<]>   q.s. "));
    String sugar =
        selected.applied(DeclaredBasisRefactoring.at(selected.site()), "Declare basis sugar");
    assertTrue(sugar.contains("  basis     sugar = white-sugar\n"), sugar);
    assertTrue(sugar.contains("0.5714286 % of sugar  xanthan-gum\n"), sugar);
  }

  @Test
  void declaresNothingTwice() {
    RefactoringFixture fixture = RefactoringFixture.at(
        CANDY.replace("liquid = water, rose-water", "liquid = water"), " 0.40 %");
    assertEquals(List.of(), DeclaredBasisRefactoring.at(fixture.site()));
  }

  /** At every line of every sample; and what has a way back leads back to the same text. */
  @Test
  void keepsTheGramsOfEveryLineOfEverySample() {
    List<Document> samples = FeatureFixture.samples("gannet-slip");
    Snapshot snapshot = FeatureFixture.snapshot(samples);
    List<Function<RefactoringSite, List<Refactoring>>> kinds = List.of(
        BasisRefactoring::at,
        UnitRefactoring::at,
        DeclaredBasisRefactoring::at,
        TotalRefactoring::rest,
        WeightsRefactoring::at);
    int tried = 0;
    for (Document document : samples) {
      for (Span range : lines(document.text().source())) {
        for (RefactoringSite site :
            RefactoringSite.at(snapshot, document, range).stream().toList()) {
          for (Refactoring one :
              kinds.stream().flatMap(k -> k.apply(site).stream()).toList()) {
            tried++;
            String text = RefactoringFixture.applied(document, one);
            assertSame(snapshot, site, text, one.title());
            assertEquals(Formatter.format(text), text, one.title());
          }
          if (site.amount().filter(i -> isOfCharge(site, i)).isPresent()) {
            assertLeadsBack(snapshot, document, site, range);
          }
        }
      }
    }
    assertTrue(tried > 300, "only " + tried);
  }

  private static boolean isOfCharge(RefactoringSite site, int index) {
    return site.line(index).measure().value() instanceof Measure.Share share
        && site.computed().formula().basisOf(share) instanceof Basis.Charge;
  }

  private static void assertLeadsBack(
      Snapshot snapshot, Document document, RefactoringSite site, Span range) {
    // A yield is searched to nine digits, and what is of the finished mass is no more exact.
    List<Refactoring> exact = BasisRefactoring.at(site).stream()
        .filter(one -> !one.title().contains("% of finished"))
        .toList();
    for (Refactoring there : exact) {
      String text = RefactoringFixture.applied(document, there);
      Document changed = Document.of(document.uri(), text);
      int line = document.text().source().lineAt(range.start());
      Span same = Span.at(changed.text().source().line(line).start());
      Snapshot next = Snapshot.of(snapshot.library().with(changed));
      List<String> back =
          BasisRefactoring.at(RefactoringSite.at(next, changed, same).orElseThrow()).stream()
              .filter(one -> one.title().contains("% of charge"))
              .map(one -> RefactoringFixture.applied(changed, one))
              .toList();
      assertEquals(List.of(document.text().source().text()), back, there.title());
    }
  }

  private static void assertSame(
      Snapshot snapshot, RefactoringSite site, String text, String title) {
    Snapshot next =
        Snapshot.of(snapshot.library().with(Document.of(site.document().uri(), text)));
    List<String> names = new ArrayList<>(site.variants());
    names.add(site.name());
    for (String name : names) {
      ComputedFormula before = RefactoringFixture.formula(snapshot, name);
      ComputedFormula after = RefactoringFixture.formula(next, name);
      List<Double> old = grams(before.amounts());
      List<Double> now = grams(after.amounts());
      double charge = before.amounts().charge().orElseThrow().doubleValue();
      assertEquals(old.size(), now.size(), title);
      for (int i = 0; i < old.size(); i++) {
        assertEquals(old.get(i), now.get(i), 1e-9 * charge, title);
      }
      assertEquals(moisture(before), moisture(after), 1e-8, title);
    }
  }

  private static List<Double> grams(Amounts amounts) {
    return amounts.lines().stream()
        .map(line -> amounts.grams(line).map(BigFraction::doubleValue).orElse(Double.NaN))
        .toList();
  }

  private static double moisture(ComputedFormula formula) {
    return MassFigures.of(formula)
        .flatMap(MassFigures::moisture)
        .map(band -> band.high())
        .map(Ratio::fraction)
        .orElse(-1.0);
  }

  private static List<Span> lines(Source source) {
    List<Span> lines = new ArrayList<>();
    for (int line = 0; line < source.lineCount(); line++) {
      lines.add(Span.at(source.line(line).start()));
    }
    return lines;
  }
}
