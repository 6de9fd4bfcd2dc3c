package dev.kettlemark.science;

import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Length;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.stream.Stream;

/**
 * Published figures that the models miss by more than they claim elsewhere.
 *
 * <p>Most of them contradict other published figures. They are listed so that nobody takes {@link CheckTable} for all there
 * is in print.
 */
public final class Contradictions {

  private static final Check.Source BROWNE =
      Check.Source.remembered("Browne 1912, table after Gerlach");
  private static final Check.Source SORPTION =
      Check.Source.read("Sloan and Labuza 1975, amorphous sugars");
  private static final Check.Source SWEETNESS =
      Check.Source.remembered("published tables of relative sweetness");
  private static final Check.Source FOOD_TABLE = Check.Source.read("USDA SR26, printed energy");
  private static final Check.Source STEAM =
      Check.Source.read("IAPWS-IF97, computed by a published steam library");
  private static final Check.Source MOUNTAIN_RULE = Check.Source.read("McGee 2004: 1 °C per 300 m");
  private static final Check.Source LINEAR_RULE =
      Check.Source.remembered("common practice, no source: linear rule of bloom");

  private static final Temperature ROOM = Temperature.ofCelsius(25);

  private Contradictions() {}

  /** Returns all of them, by model. */
  public static List<Contradiction> all() {
    return Stream.of(boiling(), sorption(), sweetness(), energy(), rest())
        .flatMap(found -> found)
        .toList();
  }

  private static Stream<Contradiction> boiling() {
    Outcome<Double> thick = boiling(9.2, 0);
    Outcome<Double> drop = Outcome.both(boiling(3, 0), boiling(3, 1500), (low, high) -> low - high);
    return Stream.of(
        new Contradiction(
            BROWNE.check("boiling of syrup", "sucrose 90.8 %", "°C", 130.0, thick, 3),
            "the table rises too early from 66 % up; Claassen's table and the candy makers' graph"
                + " agree with each other against it"),
        new Contradiction(
            MOUNTAIN_RULE.check(
                "boiling of syrup", "97 % sucrose, drop to 1500 m", "°C", 5.0, drop, 0.3),
            "the rule is right for water, but the thicker a syrup, the more a lower pressure takes"
                + " off its boiling point"));
  }

  private static Outcome<Double> boiling(double water, double metres) {
    return StandardAtmosphere.pressureAt(Length.ofMetres(metres))
        .flatMap(pressure -> SyrupBoiling.boilingPoint(
            ReferenceBlends.withWater(ReferenceBlends.SUCROSE, water), pressure))
        .map(Temperature::celsius);
  }

  /** Grams of water to 100 g of solids at one activity. */
  private static Stream<Contradiction> sorption() {
    return Stream.of(
        held("sucrose", 0.6, 14),
        held("fructose", 0.6, 18),
        held("sorbitol", 0.6, 25),
        held("42 DE", 0.6, 14),
        held("sucrose", 0.8, 35),
        held("fructose", 0.8, 44),
        held("42 DE", 0.8, 30),
        held("sucrose", 0.9, 65),
        held("fructose", 0.9, 80),
        held("42 DE", 0.9, 54));
  }

  private static Contradiction held(String blend, double activity, double grams) {
    Outcome<Double> computed = WaterActivity.waterFor(
            ReferenceBlends.named(blend), Ratio.ofFraction(activity), ROOM)
        .map(water -> 100 * water.fraction() / water.complement().fraction());
    return new Contradiction(
        SORPTION.check(
            "water holding",
            blend + " at water activity " + activity,
            "g/100 g solids",
            grams,
            computed,
            // Two hundredths of water activity, the model's own error, is some 6 % of the water.
            grams * 0.06),
        "sorption of an amorphous powder; the model follows the solutions of the same sugar, which"
            + " hold more");
  }

  private static Stream<Contradiction> sweetness() {
    return Stream.of(
        sweet("42 DE", ReferenceBlends.SYRUP_42, 0.475),
        sweet("62 DE", ReferenceBlends.SYRUP_62, 0.675));
  }

  private static Contradiction sweet(String name, Composition dry, double figure) {
    return new Contradiction(
        SWEETNESS.check(
            "sweetness",
            name + " syrup solids",
            "",
            figure,
            Sweetness.of(dry).fraction(),
            figure / 5),
        "the sum over the sugars knows no synergy, and the syrups taste sweeter than their parts");
  }

  private static Stream<Contradiction> energy() {
    return LabelChecks.FOODS.stream()
        .filter(food -> Math.abs(food.printed() - food.american()) > 1)
        .map(
            food -> new Contradiction(
                FOOD_TABLE.check(
                    "energy",
                    food.name() + ", American sum",
                    "kcal/100 g",
                    food.printed(),
                    FoodEnergy.americanKilocalories(food.composition()),
                    1),
                "the table uses factors of its own for each food, a label the general ones of the law"));
  }

  private static Stream<Contradiction> rest() {
    Mass one = Mass.ofGrams(1);
    return Stream.of(
        new Contradiction(
            STEAM.check(
                "density without air",
                "water at 20 °C, by Choi and Okos",
                "kg/m³",
                998.16,
                ChoiOkos.WATER.density(20),
                0.5),
            "the polynomial is off by 2.5; the water of a syrup therefore counts by the steam tables"),
        new Contradiction(
            LINEAR_RULE.check(
                "gelatine by bloom",
                "factor 250 to 200",
                "",
                1.25,
                GelatineStrength.byRootRule(one, new Bloom(250), new Bloom(200)).grams(),
                0.006),
            "makers print the root rule; the linear one circulates in kitchens and is offered by name"));
  }
}
