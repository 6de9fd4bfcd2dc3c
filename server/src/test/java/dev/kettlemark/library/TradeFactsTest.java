package dev.kettlemark.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Portion;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.GlassTransition;
import dev.kettlemark.science.SyrupBoiling;
import dev.kettlemark.science.Texture;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What confectioners have always known of a cook, foretold from the pantry; common practice, no source. */
class TradeFactsTest {

  private static final Temperature ROOM = Temperature.ofCelsius(20);

  /** Common practice, no source: white sugar with 15 % of dry glucose. */
  private static final Composition SUGAR_WITH_GLUCOSE = sugarWithGlucose();

  private static Composition sugarWithGlucose() {
    // The dextrose of the pantry is a hydrate; 15 % of the dry sugars are glucose.
    Composition dextrose = pantry("dextrose");
    double dry = dextrose.solids().fraction();
    return Composition.mix(List.of(
        portion(85, pantry("white-sugar")), portion(15 / dry, dextrose), portion(30, water())));
  }

  @Test
  void holdsFifteenPercentOfGlucose() {
    double glucose = SUGAR_WITH_GLUCOSE.fraction(Component.GLUCOSE);
    assertEquals(15, 100 * glucose / SUGAR_WITH_GLUCOSE.solids().fraction(), 0.1);
  }

  @Test
  void hardCrackIsGlass() {
    // Common practice, no source: at 150 °C (302 °F) such a syrup sets to a glass.
    assertEquals(Set.of(Texture.GLASSY), textures(cooked(SUGAR_WITH_GLUCOSE, 150)));
    assertEquals(150, Temperature.ofFahrenheit(302).celsius(), 1e-9);
  }

  @Test
  void hardBallIsChewy() {
    // Common practice, no source: at 127 °C (260 °F) it stays chewy.
    assertEquals(Set.of(Texture.CHEWY), textures(cooked(SUGAR_WITH_GLUCOSE, 127)));
    assertEquals(126.7, Temperature.ofFahrenheit(260).celsius(), 0.05);
  }

  @ParameterizedTest
  @CsvSource({"agave-syrup", "fructose"})
  void aFructoseSyrupStaysSticky(String ingredient) {
    // Common practice, no source: rich in fructose and cooked to 127 °C it flows.
    Composition syrup =
        Composition.mix(List.of(portion(100, pantry(ingredient)), portion(10, water())));
    double sweet = syrup.sweetSolids().fraction();
    assertTrue(syrup.fraction(Component.FRUCTOSE) / sweet > 0.6);
    assertEquals(Set.of(Texture.SOFT), textures(cooked(syrup, 127)));
  }

  @Test
  void onePercentOfWhippingProteinIsUsual() {
    // Common practice, no source: about 1 % of the whole foams it.
    var ranges = PantryShelf.named("soy-whipping-protein").uses();
    assertTrue(!ranges.isEmpty());
    assertTrue(
        ranges.stream().anyMatch(range -> range.contains(Ratio.ofPercent(1.0))),
        () -> "none of " + ranges);
  }

  @Test
  void twoHardSyrupsMakeACrunchyNougat() {
    // Common practice, no source: a nougat whose second syrup is cooked as high as a hard-crack
    // first crunches; with a second syrup at the hard ball it is chewed.
    Composition firstSyrup = Composition.mix(List.of(
        portion(70, pantry("white-sugar")),
        portion(30, pantry("glucose-syrup-42")),
        portion(20, water())));
    Composition secondSyrup = Composition.mix(List.of(
        portion(50, pantry("white-sugar")),
        portion(35, pantry("glucose-syrup-42")),
        portion(15, pantry("honey")),
        portion(20, water())));
    Portion first = cookedPortion(500, firstSyrup, 150);
    Composition crunchy = together(first, cookedPortion(500, secondSyrup, 150));
    Composition chewy = together(first, cookedPortion(500, secondSyrup, 120));
    assertEquals(Set.of(Texture.GLASSY), textures(crunchy));
    assertTrue(!textures(chewy).contains(Texture.GLASSY), () -> "textures " + textures(chewy));
  }

  private static Composition together(Portion one, Portion other) {
    return Composition.mix(List.of(one, other));
  }

  /** What both ends of the band of the glass transition foretell. */
  private static Set<Texture> textures(Composition cooked) {
    Band<Temperature> glass = GlassTransition.of(cooked).toOptional().orElseThrow();
    Set<Texture> textures = new TreeSet<>();
    textures.add(Texture.of(glass.low(), ROOM));
    textures.add(Texture.of(glass.high(), ROOM));
    return textures;
  }

  private static Composition cooked(Composition syrup, double celsius) {
    return cookedPortion(1000, syrup, celsius).composition();
  }

  private static Portion cookedPortion(double grams, Composition syrup, double celsius) {
    return SyrupBoiling.cook(
            portion(grams, syrup), Temperature.ofCelsius(celsius), Pressure.STANDARD_ATMOSPHERE)
        .toOptional()
        .orElseThrow()
        .cooked();
  }

  private static Composition pantry(String name) {
    return PantryShelf.named(name).composition().toOptional().orElseThrow();
  }

  private static Composition water() {
    return Composition.of(Component.WATER);
  }

  private static Portion portion(double grams, Composition composition) {
    return new Portion(Mass.ofGrams(grams), composition);
  }
}
