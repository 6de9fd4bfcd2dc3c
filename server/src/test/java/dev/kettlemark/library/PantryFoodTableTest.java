package dev.kettlemark.library;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.quantity.Ratio;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Holds the pantry against the food table it quotes.
 *
 * <p>Source: USDA National Nutrient Database SR26, abbreviated file, public domain; rows by NDB
 * number, figures per 100 g.
 */
class PantryFoodTableTest {

  /** Tables print two decimals; the last may be off by what a split of the sugars rounds. */
  private static final double TOLERANCE = 0.05;

  /** Salt in sodium: the factor of Regulation (EU) No 1169/2011, annex I, point 11. */
  private static final double SALT_PER_SODIUM = 2.5;

  /**
   * Columns: NDB number, pantry name, water, protein, fat, carbohydrate by difference, sugars, ash (all
   * in g), sodium (mg).
   *
   * <p>Sugars are left out where the table marks them as doubtful: maple syrup and molasses (more than
   * the sugars named one by one), fructose powder, coconut cream and coconut milk.
   */
  private static final String TABLE = """
      01124 egg-white               87.57 10.90  0.17  0.73  0.71  0.63   166
      01172 egg-white-pasteurised   88.97  9.30  0.04  1.26  0.20  0.43   169
      01136 egg-white-powder         8.54 82.40  0.04  4.47  0     4.55  1238
      12061 almond                   4.41 21.15 49.93 21.55  4.20  2.97     1
      12062 almond-flour             4.51 21.40 52.52 18.67  4.63  2.91    19
      12195 almond-paste             1.64 20.96 55.50 18.82  4.43  3.09     7
      12120 hazelnut                 5.31 14.95 60.75 16.70  4.34  2.29     0
      12121 hazelnut-flour           5.79 13.70 61.15 17.00  3.49  2.36     0
      12151 pistachio                3.91 20.27 45.39 27.51  7.66  2.91     1
      12087 cashew                   5.20 18.22 43.85 30.19  5.91  2.54    12
      12155 walnut                   4.07 15.23 65.21 13.71  2.61  1.78     2
      12142 pecan                    3.52  9.17 71.97 13.86  3.97  1.49     0
      12131 macadamia                1.36  7.91 75.77 13.82  4.57  1.14     5
      16087 peanut                   6.50 25.80 49.24 16.13  3.97  2.33    18
      16390 roasted-peanut           1.55 23.68 49.66 21.51  4.18  3.60     6
      16099 peanut-flour-defatted    7.80 52.20  0.55 34.70  8.22  4.75   180
      16398 peanut-paste             1.81 25.09 50.39 19.56  9.22  3.15    17
      12023 sesame                   4.69 17.73 49.67 23.45  0.30  4.45    11
      12108 desiccated-coconut       3.00  6.88 64.53 23.65  7.35  1.94    37
      12115 coconut-cream           53.90  3.63 34.68  6.65  -     1.15     4
      12118 coconut-milk            72.88  2.02 21.33  2.81  -     0.97    13
      04047 coconut-oil              0     0   100     0     0     0        0
      04501 cocoa-butter             0     0   100     0     0     0        0
      04531 soy-lecithin             0     0   100     0     0     0        0
      19903 couverture-dark-62       1.25  6.12 38.31 52.42 36.71  1.90    10
      19165 cocoa-powder             3.00 19.60 13.70 57.90  1.75  5.80    21
      19078 cocoa-mass               1.34 12.90 52.31 29.84  0.91  3.60    24
      01145 butter                  17.94  0.85 81.11  0.06  0.06  0.04    11
      01003 butter-oil               0.24  0.28 99.48  0     0     0        2
      01077 milk                    88.13  3.15  3.25  4.80  5.05  0.67    43
      01091 skim-milk-powder         3.16 36.16  0.77 51.98 51.98  7.93   535
      01095 condensed-milk          27.16  7.91  8.70 54.40 54.40  1.83   127
      01115 whey-powder              3.19 12.93  1.07 74.46 74.46  8.35  1079
      16122 soy-protein-isolate      4.98 80.69  3.39  7.36  0     3.58  1005
      19177 gelatine-200            13.00 85.60  0.10  0     0     1.30   196
      20027 corn-starch              8.32  0.26  0.05 91.27  0     0.09     9
      20061 rice-flour              11.89  5.95  1.42 80.13  0.12  0.61     0
      18373 cream-of-tartar          1.70  0     0    61.50  0    36.80    52
      02047 sea-salt                 0.20  0     0     0     0    99.80 38758
      02050 vanilla-extract         52.58  0.06  0.06 12.65 12.65  0.26     9
      09302 raspberry-puree         85.75  1.20  0.65 11.94  4.42  0.46     1
      09316 strawberry-puree        90.95  0.67  0.30  7.68  4.89  0.40     1
      09401 apple-puree             88.22  0.17  0.10 11.27  9.39  0.24     2
      09176 mango-puree             83.46  0.82  0.38 14.98 13.66  0.36     1
      09152 lemon-juice             92.31  0.35  0.24  6.90  2.52  0.21     1
      19335 white-sugar              0.02  0     0    99.98 99.80  0.01     1
      19336 icing-sugar              0.23  0     0    99.77 97.81  0.01     2
      19334 brown-sugar              1.34  0.12  0    98.09 97.02  0.45    28
      19296 honey                   17.10  0.30  0    82.40 82.12  0.20     4
      19353 maple-syrup             32.39  0.04  0.06 67.04  -     0.47    12
      19912 agave-syrup             22.94  0.09  0.45 76.37 68.03  0.14     4
      19304 molasses                21.87  0     0.10 74.73  -     3.30    37
      43216 fructose                 0     0     0   100     -     0       12
      """;

  /** Quoted, but no row of the table above: the carbonate of soda leaves as gas before ash is weighed. */
  private static final Set<String> NOT_COMPARED = Set.of("18372");

  /** A quotation such as {@code USDA SR26, food 12061}; rows quoted from memory are not compared. */
  private static final Pattern QUOTED =
      Pattern.compile("^USDA SR26, food ([0-9]{5})(?!, from memory)");

  private static final Pattern DRIED =
      Pattern.compile("^computed from USDA SR26, food ([0-9]{5}), dried to ([0-9.]+) % water");

  /** A row; sugars are NaN where the table's figure is not used. */
  record Food(
      String number,
      String name,
      double water,
      double protein,
      double fat,
      double carbohydrate,
      double sugars,
      double ash,
      double sodium) {

    static Food of(String line) {
      String[] cells = line.strip().split(" +");
      double[] figures = Arrays.stream(cells)
          .skip(2)
          .mapToDouble(cell -> cell.equals("-") ? Double.NaN : Double.parseDouble(cell))
          .toArray();
      return new Food(
          cells[0],
          cells[1],
          figures[0],
          figures[1],
          figures[2],
          figures[3],
          figures[4],
          figures[5],
          figures[6]);
    }
  }

  static List<Food> foods() {
    return TABLE.lines().map(Food::of).toList();
  }

  @Test
  void comparesEnoughFoods() {
    assertTrue(foods().size() >= 30);
  }

  @ParameterizedTest
  @MethodSource("foods")
  void agreesWithTheFoodTable(Food food) {
    Composition found = composition(food.name());
    double minerals = percent(found, Component.SALT) + percent(found, Component.ASH);
    double salt = Math.min(food.ash(), food.sodium() / 1000 * SALT_PER_SODIUM);
    assertAll(
        food.name(),
        () -> assertEquals(food.water(), percent(found, Component.WATER), TOLERANCE, "water"),
        () -> assertEquals(food.protein(), percent(found, Component.PROTEIN), TOLERANCE, "protein"),
        () -> assertEquals(food.fat(), percent(found, Component.FAT), TOLERANCE, "fat"),
        () -> assertEquals(food.ash(), minerals, TOLERANCE, "ash, salt among it"),
        // The exact factor is the ratio of the molar masses, 2.542; a label rounds it to 2.5.
        () -> assertEquals(salt, percent(found, Component.SALT), TOLERANCE + 0.017 * salt, "salt"));
  }

  @ParameterizedTest
  @MethodSource("foods")
  void agreesOnTheSugars(Food food) {
    // Carbohydrate is found by difference, so a sugar assay can exceed it; the difference wins.
    double expected = Math.min(food.sugars(), food.carbohydrate());
    double found = composition(food.name()).sugars().percent();
    if (Double.isNaN(food.sugars())) {
      assertTrue(found <= food.carbohydrate() + TOLERANCE, food.name());
    } else {
      assertEquals(expected, found, TOLERANCE, food.name());
    }
  }

  @Test
  void comparesEveryFoodThatThePantryQuotes() {
    Set<String> known = foods().stream().map(Food::number).collect(Collectors.toSet());
    List<String> missing = new ArrayList<>();
    for (Ingredient ingredient : PantryShelf.ingredients()) {
      Matcher quoted = QUOTED.matcher(PantryShelf.text(ingredient, "contains"));
      if (quoted.find()
          && !known.contains(quoted.group(1))
          && !NOT_COMPARED.contains(quoted.group(1))) {
        missing.add(ingredient.name().value() + " " + quoted.group(1));
      }
    }
    assertEquals(List.of(), missing);
  }

  /**
   * Columns: NDB number, pantry name, saturated fatty acids in g (nutrient 606).
   *
   * <p>Source: the same table, from memory.
   */
  private static final String SATURATES = """
      19165 cocoa-powder                8.070
      19078 cocoa-mass                 32.351
      19078 cocoa-nibs                 32.351
      04501 cocoa-butter               59.700
      19903 couverture-dark-62         22.030
      01077 milk                        1.865
      01145 butter                     51.368
      01003 butter-oil                 61.924
      01091 skim-milk-powder            0.499
      01090 whole-milk-powder          16.742
      01095 condensed-milk              5.486
      01153 evaporated-milk             4.591
      01115 whey-powder                 0.684
      04047 coconut-oil                86.500
      12115 coconut-cream              30.753
      12118 coconut-milk               18.915
      04506 sunflower-oil                10.3
      04531 soy-lecithin               15.005
      01124 egg-white                       0
      01172 egg-white-pasteurised           0
      01136 egg-white-powder                0
      01125 egg-yolk                    9.551
      16122 soy-protein-isolate         0.422
      02050 vanilla-extract             0.010
      14214 soluble-coffee              0.197
      02010 cinnamon-ground             0.345
      02021 ginger-ground               2.599
      02043 turmeric-ground             1.838
      09302 raspberry-puree             0.019
      09316 strawberry-puree            0.015
      09401 apple-puree                 0.017
      09176 mango-puree                 0.092
      09152 lemon-juice                 0.040
      09032 dried-apricot               0.017
      09266 pineapple-puree-raw         0.009
      09148 kiwi-puree-raw              0.029
      19177 gelatine-160                0.070
      19177 gelatine-200                0.070
      19177 gelatine-250                0.070
      19177 fish-gelatine               0.070
      20027 corn-starch                 0.009
      20061 rice-flour                  0.386
      12061 almond                      3.802
      12062 almond-flour                3.953
      12195 almond-paste                4.152
      12120 hazelnut                    4.464
      12121 hazelnut-flour              4.669
      12151 pistachio                   5.556
      12087 cashew                      7.783
      12155 walnut                      6.126
      12142 pecan                       6.180
      12131 macadamia                  12.061
      12147 pine-nut                    4.899
      16087 peanut                      6.279
      16390 roasted-peanut              6.893
      16398 peanut-paste                10.09
      16099 peanut-flour-defatted       0.064
      12023 sesame                      6.957
      12036 sunflower-seed              4.455
      12014 pumpkin-seed                8.659
      12108 desiccated-coconut         57.218
      19353 maple-syrup                 0.007
      19912 agave-syrup                     0
      19304 molasses                    0.018
      08120 oat-flake                   1.110
      """;

  private static final Pattern SATURATES_QUOTED =
      Pattern.compile("^USDA SR26, food ([0-9]{5}), from memory$");

  @ParameterizedTest
  @MethodSource("saturates")
  void agreesOnTheSaturates(String number, String name, double expected) {
    Ingredient found = PantryShelf.named(name);
    assertEquals(expected, found.saturates().orElseThrow().percent(), 0.006, name);
    assertEquals(
        "USDA SR26, food " + number + ", from memory", PantryShelf.text(found, "saturates"));
  }

  static Stream<Arguments> saturates() {
    return SATURATES
        .lines()
        .map(line -> line.strip().split(" +"))
        .map(cells -> Arguments.of(cells[0], cells[1], Double.parseDouble(cells[2])));
  }

  @Test
  void comparesTheSaturatesOfEveryFoodThatThePantryQuotes() {
    Set<String> compared =
        saturates().map(row -> row.get()[1].toString()).collect(Collectors.toSet());
    Set<String> quoted = PantryShelf.ingredients().stream()
        .filter(i -> SATURATES_QUOTED.matcher(PantryShelf.text(i, "saturates")).find())
        .map(i -> i.name().value())
        .collect(Collectors.toSet());
    assertEquals(quoted, compared);
  }

  /** The fat of a dried nut or fruit is the fat it had. */
  @Test
  void driesTheSaturatesWithTheFat() {
    Map<String, String> names =
        foods().stream().collect(Collectors.toMap(Food::number, Food::name));
    int compared = 0;
    for (Ingredient ingredient : PantryShelf.ingredients()) {
      Matcher dried = DRIED_SATURATES.matcher(PantryShelf.text(ingredient, "saturates"));
      if (dried.find()) {
        Ingredient raw = PantryShelf.named(names.getOrDefault(dried.group(1), "?"));
        double ofRawFat = raw.saturates().orElseThrow().percent()
            / percent(composition(raw.name().value()), Component.FAT);
        assertEquals(
            ofRawFat * percent(composition(ingredient.name().value()), Component.FAT),
            ingredient.saturates().orElseThrow().percent(),
            TOLERANCE,
            ingredient.name().value());
        compared++;
      }
    }
    assertTrue(compared >= 5, "only " + compared);
  }

  private static final Pattern DRIED_SATURATES =
      Pattern.compile("^computed from USDA SR26, food ([0-9]{5}), from memory, dried to ");

  @Test
  void quotesTheNumberItIsComparedWith() {
    for (Food food : foods()) {
      String source = PantryShelf.text(PantryShelf.named(food.name()), "contains");
      assertTrue(
          source.startsWith("USDA SR26, food " + food.number()), food.name() + ": " + source);
    }
  }

  @Test
  void driesWhatItComputes() {
    Map<String, String> names =
        foods().stream().collect(Collectors.toMap(Food::number, Food::name));
    int compared = 0;
    for (Ingredient ingredient : PantryShelf.ingredients()) {
      Matcher dried = DRIED.matcher(PantryShelf.text(ingredient, "contains"));
      if (dried.find()) {
        Composition raw = composition(names.getOrDefault(dried.group(1), "?"));
        Ratio water = Ratio.ofPercent(Double.parseDouble(dried.group(2)));
        Composition expected = raw.withWaterFraction(water);
        Composition found = composition(ingredient.name().value());
        for (Component component : Component.values()) {
          assertEquals(
              percent(expected, component),
              percent(found, component),
              TOLERANCE,
              ingredient.name().value() + ": " + component.word());
        }
        compared++;
      }
    }
    assertTrue(compared >= 5, "only " + compared);
  }

  /** Hydrates by molar mass, g/mol, from memory of the IUPAC atomic weights. */
  @Test
  void countsTheWaterOfCrystals() {
    double water = 18.015;
    checkHydrate("dextrose", water / (180.156 + water));
    checkHydrate("lactose", water / (342.297 + water));
    checkHydrate("trehalose", 2 * water / (342.297 + 2 * water));
    checkHydrate("citric-acid-monohydrate", water / (192.124 + water));
    checkHydrate("trisodium-citrate", 2 * water / (258.068 + 2 * water));
    checkHydrate("potassium-citrate", water / (306.395 + water));
    checkHydrate("calcium-lactate", 5 * water / (218.22 + 5 * water));
  }

  private static void checkHydrate(String name, double expected) {
    assertEquals(expected * 100, percent(composition(name), Component.WATER), TOLERANCE, name);
  }

  private static Composition composition(String name) {
    return PantryShelf.named(name).composition().orElse(Composition.of(Component.OTHER));
  }

  private static double percent(Composition composition, Component component) {
    return composition.fraction(component) * 100;
  }
}
