package dev.kettlemark.answers;

import static dev.kettlemark.answers.Workbench.because;
import static dev.kettlemark.answers.Workbench.figure;
import static dev.kettlemark.answers.Workbench.known;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Portion;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.science.Bloom;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Exchanges of one amount for another: gelatine, egg white, sugar for syrup. */
class ExchangesTest {

  private static final String SYRUP = """
      formula candy
        percent of charge
        batch 1000 g
      stage syrup
        70.00 % white-sugar
        30.00 % water
        cook to 130 °C
      """;

  private static final String FOAM = """
      formula foam
        percent of charge
        batch 1000 g
      stage foam
        40.00 % egg-white
        60.00 % caster-sugar
        whip
      """;

  private static final String DRIED = """
      formula foam
        percent of charge
        batch 1000 g
      stage foam
         4.00 % egg-white-powder
        36.00 % water
        60.00 % caster-sugar
        whip
      """;

  private static final String GEL = """
      formula gel
        percent of charge
        batch 1000 g
      stage soak
         1.50 % gelatine-250
         9.00 % water
      stage body
        89.50 % white-sugar
        all of soak
      """;

  private static Material material(Workbench bench, String name) {
    return bench.shelf().material(name).orElseThrow();
  }

  /** Factors m2/m1 of a published table with two decimals, after the gelatine makers' root rule. */
  @ParameterizedTest
  @CsvSource({"100, 60, 1.29", "60, 260, 0.48", "200, 160, 1.12", "180, 240, 0.87"})
  void takesGelatineByTheRootRule(double from, double to, double factor) {
    Answer answer = GelatineExchange.of(
        Mass.ofGrams(100), new Bloom(from), new Bloom(to), GelatineExchange.Rule.ROOT);
    assertEquals(factor * 100, figure(answer, "gelatine"), 0.5);
  }

  /** 250 for 200: 1.25 by the linear rule of kitchens, 1.118 by the root rule; common practice. */
  @Test
  void saysWhereTheTwoRulesPart() {
    Answer answer = GelatineExchange.of(
        Mass.ofGrams(12), new Bloom(250), new Bloom(200), GelatineExchange.Rule.LINEAR);
    assertEquals(15.0, figure(answer, "gelatine"), 1e-9);
    assertEquals(13.416, figure(answer, "gelatine-by-root-rule"), 0.001);
    assertEquals(1, answer.notes().size());
    Answer near = GelatineExchange.of(
        Mass.ofGrams(12), new Bloom(220), new Bloom(200), GelatineExchange.Rule.ROOT);
    assertEquals(List.of(), near.notes());
  }

  @Test
  void keepsTheChargeWithTheWaterOfTheSameStage() {
    Workbench bench = Workbench.of(GEL);
    ComputedFormula formula = bench.formula("gel");
    Answer answer = known(GelatineExchange.of(
        formula, 0, material(bench, "gelatine-200"), GelatineExchange.Rule.ROOT));
    assertEquals(
        "Use gelatine-200: 1.68 % for gelatine-250 1.50 % (by the linear rule 1.88 %), water 8.82 %",
        answer.instruction());
    ComputedFormula after = Change.tried(formula, answer.changes());
    assertEquals(BigFraction.ONE, after.amounts().total());
    assertEquals(new BigFraction(168, 10_000), after.amounts().shareOf("gelatine-200"));
  }

  @Test
  void asksForTheBloom() {
    Workbench bench = Workbench.of(GEL);
    assertEquals(
        "`agar` states no bloom",
        because(GelatineExchange.of(
            bench.formula("gel"), 0, material(bench, "agar"), GelatineExchange.Rule.ROOT)));
  }

  /**
   * Dried to water 1 : 6.6 at equal protein, 1 : 6.4 at equal solids: from the protein and water of USDA
   * SR26, foods 01124 and 01136.
   */
  @ParameterizedTest
  @CsvSource({"PROTEIN, 6.6", "SOLIDS, 6.4"})
  void takesDriedWhiteForFresh(WhiteExchange.Equal equal, double partsOfWater) {
    Workbench bench = Workbench.of(FOAM);
    Answer answer = known(WhiteExchange.of(
        Mass.ofGrams(134),
        material(bench, "egg-white"),
        material(bench, "egg-white-powder"),
        equal));
    double powder = figure(answer, "white");
    double water = figure(answer, "water");
    assertEquals(134, powder + water, 1e-9);
    assertEquals(partsOfWater, water / powder, 0.06);
  }

  /** An egg board's sheet says 0.12 parts of powder and 0.88 of water; within a tenth of the protein's. */
  @Test
  void agreesWithTheEggBoard() {
    Workbench bench = Workbench.of(FOAM);
    Answer answer = known(WhiteExchange.of(
        Mass.ofGrams(100),
        material(bench, "egg-white"),
        material(bench, "egg-white-powder"),
        WhiteExchange.Equal.PROTEIN));
    assertEquals(12, figure(answer, "white"), 1.4);
  }

  @Test
  void weighsTheWaterBesideThePowder() {
    Workbench bench = Workbench.of(FOAM);
    ComputedFormula formula = bench.formula("foam");
    Answer answer = known(WhiteExchange.of(
        formula,
        bench.shelf(),
        0,
        material(bench, "egg-white-powder"),
        WhiteExchange.Equal.PROTEIN));
    assertEquals(
        "Use egg-white-powder: 5.29 % for egg-white 40.00 %, water 34.71 %", answer.instruction());
    ComputedFormula after = Change.tried(formula, answer.changes());
    assertEquals(BigFraction.ONE, after.amounts().total());
    assertEquals(protein(formula), protein(after), 1e-4);
  }

  @Test
  void takesTheWaterAwayForFreshWhite() {
    Workbench bench = Workbench.of(DRIED);
    ComputedFormula formula = bench.formula("foam");
    Answer answer = known(WhiteExchange.of(
        formula, bench.shelf(), 0, material(bench, "egg-white"), WhiteExchange.Equal.PROTEIN));
    ComputedFormula after = Change.tried(formula, answer.changes());
    assertEquals(BigFraction.ONE, after.amounts().total());
    assertEquals(protein(formula), protein(after), 1e-4);
    assertTrue(answer.notes().stream().anyMatch(note -> note.contains("raw egg")));
  }

  @Test
  void tellsThatThereIsTooLittleWaterForFreshWhite() {
    Workbench bench =
        Workbench.of(DRIED.replace("36.00 %", "6.00 %").replace("60.00 %", "90.00 %"));
    assertEquals(
        "`water` would have to give up 26.24 % and holds only 6.00 %",
        because(WhiteExchange.of(
            bench.formula("foam"),
            bench.shelf(),
            0,
            material(bench, "egg-white"),
            WhiteExchange.Equal.PROTEIN)));
  }

  @Test
  void findsWhatThePantrySaysStandsIn() {
    Workbench bench = Workbench.of(FOAM);
    List<Shelf.StandIn> standIns = bench.shelf().standIns("egg-white");
    List<String> names =
        standIns.stream().map(standIn -> standIn.material().name()).toList();
    assertTrue(names.contains("aquafaba"), names.toString());
    Shelf.StandIn soy = standIns.stream()
        .filter(standIn -> standIn.material().name().equals("soy-whipping-protein"))
        .findFirst()
        .orElseThrow();
    assertEquals(0.75 * 0.12, soy.share().fraction(), 1e-9);
    assertEquals(List.of("egg-white-powder"), soy.by());
    Answer answer = known(WhiteExchange.of(bench.formula("foam"), bench.shelf(), 0, soy));
    assertEquals(
        "Use soy-whipping-protein: 3.60 % for egg-white 40.00 %, water 36.40 %, brings the allergen soy",
        answer.instruction());
    assertTrue(answer.notes().contains("it holds the allergen soy"));
  }

  /** Hard candy needs a quarter to a third of doctor sugars not to grain; common practice, no source. */
  @ParameterizedTest
  @CsvSource({"10", "25", "35", "50"})
  void exchangesSugarForSyrupAtEqualSolids(double percent) {
    Workbench bench = Workbench.of(SYRUP);
    ComputedFormula formula = bench.formula("candy");
    Answer answer = known(exchange(bench, percent));
    ComputedFormula after = Change.tried(formula, answer.changes());
    assertEquals(BigFraction.ONE, after.amounts().total());
    assertEquals(percent, figure(answer, "doctor-share"), 0.03);
    assertEquals(solids(formula), solids(after), 2e-4);
  }

  /** By hand: 80.3 g of solids in 100 g of syrup, so that 1 g of sugar goes for 1.245 g of syrup. */
  @Test
  void takesMoreSyrupThanSugar() {
    Answer answer = known(exchange(Workbench.of(SYRUP), 25));
    assertEquals(1.245, figure(answer, "syrup-put-in") / figure(answer, "sugar-taken-out"), 0.003);
    assertTrue(answer.instruction().startsWith("Exchange 17.4"), answer.instruction());
  }

  @Test
  void tellsWhatTheWaterAllows() {
    Workbench bench =
        Workbench.of(SYRUP.replace("70.00 %", "95.00 %").replace("30.00 %", "5.00 %"));
    String because = because(exchange(bench, 60));
    assertTrue(because.contains("from 0.0 % to 21."), because);
    assertTrue(because.contains("never 60.0 %"), because);
  }

  @Test
  void goesBackToSugar() {
    Workbench bench = Workbench.of(SYRUP.replace("70.00 % white-sugar", """
        40.00 % white-sugar
          30.00 % glucose-syrup-42"""));
    Answer answer = known(exchange(bench, 10));
    assertEquals(10, figure(answer, "doctor-share"), 0.03);
    assertTrue(figure(answer, "sugar-taken-out") < 0);
    assertTrue(answer.instruction().contains("glucose-syrup-42 for"), answer.instruction());
  }

  @Test
  void saysThatThereIsNoSugar() {
    Workbench bench = Workbench.of(SYRUP.replace("white-sugar", "honey"));
    assertEquals("`syrup` weighs no sugar that could be exchanged", because(exchange(bench, 60)));
  }

  /** A formula in grams stays in grams, and its charge stays the same. */
  @Test
  void exchangesGramsToo() {
    Workbench bench = Workbench.of("""
        formula candy
        stage syrup
          700 g white-sugar
          300 g water
          cook to 130 °C
        """);
    Answer answer = known(exchange(bench, 25));
    ComputedFormula after = Change.tried(bench.formula("candy"), answer.changes());
    assertEquals(new BigFraction(1000), after.amounts().charge().orElseThrow());
    assertEquals(25, figure(answer, "doctor-share"), 0.05);
  }

  @Test
  void leavesAmountsThatHangOnOthers() {
    Workbench bench =
        Workbench.of(FOAM.replace("40.00 % egg-white", "66.67 % of caster-sugar egg-white"));
    assertTrue(because(WhiteExchange.of(
            bench.formula("foam"),
            bench.shelf(),
            0,
            material(bench, "egg-white-powder"),
            WhiteExchange.Equal.PROTEIN))
        .contains("hangs on others"));
  }

  private static Outcome<Answer> exchange(Workbench bench, double percent) {
    return DoctorExchange.of(
        bench.formula("candy"), bench.shelf(), 0, Ratio.ofPercent(percent), Optional.empty());
  }

  private static double protein(ComputedFormula formula) {
    Portion left = known(formula.process().last().orElseThrow().left().portion());
    return left.massOf(Component.PROTEIN)
        .dividedBy(formula.process().charge().mass())
        .fraction();
  }

  /** Dry solids as a share of the charge. */
  private static double solids(ComputedFormula formula) {
    Portion left = known(formula.process().last().orElseThrow().left().portion());
    return left.mass()
        .times(left.composition().solids())
        .dividedBy(formula.process().charge().mass())
        .fraction();
  }
}
