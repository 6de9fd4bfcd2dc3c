package dev.kettlemark.scaling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.quantity.Outcome;
import org.hipparchus.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class ScalingTest {

  private static final String KITCHEN = """
      house bench "Bench"
        scale   big    reads 1 g     to 6000 g
        scale   fine   reads 0.01 g  to 200 g
        bowl    mixer  holds 4.8 L   whips 90-1800 g   weighs 1.1 kg
        mould   dome   has 24 pieces of 10.0 mL
        frame   slab   measures 400 x 300 x 10 mm
      """;

  private static final String COLD_BAR = """
      formula cold-bar
        percent of charge
        batch 1200 g
      stage dough
        60.00 % desiccated-coconut
        39.75 % honey
         0.25 % sea-salt
        mix
      """;

  private static final String CANDY = """
      formula candy
        percent of charge
        batch 1000 g
      stage syrup in mixer
        60.00 % white-sugar
        25.00 % glucose-syrup-42
        q.s.    water
        cook    to 121 °C
      """;

  private static BigFraction grams(long hundredths) {
    return new BigFraction(hundredths, 100);
  }

  private static Scaling scale(String formulaText, String name, Target target) {
    return known(Scaling.of(LibraryFixture.of(KITCHEN + formulaText).formula(name), target));
  }

  private static <T> T known(Outcome<T> outcome) {
    return outcome.fold(value -> value, unknown -> {
      throw new AssertionError(unknown.because());
    });
  }

  /** 37 × 42 g = 1554 g, which is 96 % of 1618.75 g; by hand. */
  @Test
  void asksExactlyForPiecesAndLossWhereNothingBoils() {
    Target order =
        new Target.Pieces(new BigFraction(37), new BigFraction(42), new BigFraction(4, 100));
    assertEquals(grams(161_875), scale(COLD_BAR, "cold-bar", order).batch());
  }

  @Test
  void asksForTheChargeThatLeavesTheSameOrderAfterBoiling() {
    Target order =
        new Target.Pieces(new BigFraction(37), new BigFraction(42), new BigFraction(4, 100));
    Scaling scaling = scale(CANDY, "candy", order);
    assertEquals(1618.75, scaling.cooked().mass().grams(), 0.1);
    assertEquals(1554.0, scaling.finished().mass().grams(), 0.1);
    assertTrue(scaling.charge().mass().grams() > 1618.75);
  }

  /** By hand: 600 g sucrose and 250 g of a syrup of 80.3 % solids keep their solids when boiled. */
  @Test
  void keepsTheSolidsOfTheCharge() {
    Scaling scaling = scale(CANDY, "candy", new Target.Charge(new BigFraction(1000)));
    double solids = 600 * 0.9998 + 250 * 0.803;
    // 60:40 sucrose to DE 42 keeps 10.39 % water at 121 °C (model table of the boiling class); this
    // mix has more sucrose, so the true figure lies between that and 10.63 % of pure sucrose.
    double cooked = scaling.cooked().mass().grams();
    assertTrue(
        cooked > solids / (1 - 0.1039) - 1 && cooked < solids / (1 - 0.1063) + 1, "" + cooked);
  }

  @Test
  void takesAllOfWhatIsAtHand() {
    Target.InHand target = new Target.InHand("honey", new BigFraction(159));
    assertEquals(grams(40_000), scale(COLD_BAR, "cold-bar", target).batch());
  }

  @Test
  void fillsABowlToItsLimit() {
    assertEquals(
        new BigFraction(1800),
        scale(CANDY, "candy", new Target.BowlLimit("mixer")).batch());
  }

  @Test
  void splitsAStageThatItsBowlCannotTake() {
    Scaling scaling = scale(CANDY, "candy", new Target.Charge(new BigFraction(5000)));
    assertEquals(1, scaling.splits().size());
    assertEquals(3, scaling.splits().get(0).charges());
  }

  /** 24 cavities of 10 mL of a mass of 1.3 g/mL hold 312 g. */
  @Test
  void fillsMouldsByTheDensityThatTheFormulaExpects() {
    String whipped = COLD_BAR.replace("batch 1200 g", "batch 1200 g\n  expect density 1.30 g/mL");
    Target.Moulds target = new Target.Moulds("dome", 1, BigFraction.ZERO);
    assertEquals(new BigFraction(312), scale(whipped, "cold-bar", target).batch());
  }

  /** 400 × 300 × 10 mm is 1.2 L. */
  @Test
  void fillsFrames() {
    String whipped = COLD_BAR.replace("batch 1200 g", "batch 1200 g\n  expect density 0.80 g/mL");
    Target.Frames target = new Target.Frames("slab", 2, BigFraction.ZERO);
    assertEquals(new BigFraction(1920), scale(whipped, "cold-bar", target).batch());
  }

  @Test
  void doesNotGuessTheAirInAWhippedMass() {
    String whipped = COLD_BAR.replace("  mix\n", "  mix\n  whip until soft-peak\n");
    LibraryFixture library = LibraryFixture.of(KITCHEN + whipped);
    Target.Moulds target = new Target.Moulds("dome", 1, BigFraction.ZERO);
    assertFalse(Scaling.of(library.formula("cold-bar"), target).isKnown());
  }

  @Test
  void asksForNoChargeOfWhatLeavesNothing() {
    String empty = COLD_BAR + "stage slab\n  cut 40 x 20 mm\n";
    LibraryFixture library = LibraryFixture.of(KITCHEN + empty);
    Outcome<Scaling> none = Scaling.of(
        library.formula("cold-bar"), new Target.Finished(BigFraction.ONE, BigFraction.ZERO));
    assertEquals(
        "the last stage leaves nothing, whatever is weighed in",
        none.fold(s -> "", Outcome.Unknown::because));
  }

  @Test
  void saysWhyATargetCannotBeReached() {
    LibraryFixture library = LibraryFixture.of(KITCHEN + COLD_BAR);
    Outcome<Scaling> none =
        Scaling.of(library.formula("cold-bar"), new Target.InHand("pistachio", BigFraction.ONE));
    assertEquals("the formula weighs no `pistachio`", none.fold(s -> "", Outcome.Unknown::because));
  }

  @Test
  void weighsFinelyWhatIsLittle() {
    Scaling scaling = scale(COLD_BAR, "cold-bar", new Target.Charge(new BigFraction(1200)));
    WeighingLine salt = scaling.weighing().lines().get(2);
    assertEquals("fine", salt.scale().orElseThrow().name().value());
    assertEquals(grams(300), salt.reading());
  }

  @Test
  void readingsOfAScaleSumToTheRoundedSum() {
    String thirds = """
        formula thirds
          percent of charge
          batch 1000 g
        stage mix
          33.335 % white-sugar
          33.335 % caster-sugar
          q.s.     icing-sugar
          mix
        """.replace("  part-less\n", "");
    Scaling scaling = scale(thirds, "thirds", new Target.Charge(new BigFraction(1000)));
    assertEquals(new BigFraction(1000), scaling.weighing().total());
  }

  @Test
  void proposesAPremixForWhatNoScaleWeighs() {
    String coarse = """
        house bench
          scale big reads 1 g to 6000 g
        formula gum-mix
          percent of charge
          batch 1000 g
        stage dry
          0.047 % xanthan-gum
          q.s.    caster-sugar
          blend
        """;
    WeighingLine gum = known(Scaling.of(
            LibraryFixture.of(coarse).formula("gum-mix"), new Target.Charge(new BigFraction(1000))))
        .weighing()
        .lines()
        .get(0);
    WeighingLine.Premix premix = gum.premix().orElseThrow();
    assertEquals("caster-sugar", premix.carrier());
    // One gram is 5.3 % of 0.47 g with 39 parts of sugar, and 4.3 % of it with 49, by hand.
    assertEquals(49, premix.parts());
    assertEquals(new BigFraction(2350, 100), premix.grams());
  }

  @Test
  void weighsInSeveralGoesWhatNoScaleHolds() {
    Scaling scaling = scale(COLD_BAR, "cold-bar", new Target.Charge(new BigFraction(12_000)));
    assertEquals(2, scaling.weighing().lines().get(0).weighings());
  }
}
