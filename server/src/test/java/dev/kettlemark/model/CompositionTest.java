package dev.kettlemark.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Chance;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Ratio;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class CompositionTest {

  private static final Composition SYRUP = Composition.ofPercents(
      Map.of(Component.SUCROSE, 60.0, Component.GLUCOSE, 10.0, Component.WATER, 30.0));

  @Test
  void splitsIntoWaterAndSolids() {
    assertEquals(30, SYRUP.water().percent(), 1e-12);
    assertEquals(70, SYRUP.solids().percent(), 1e-12);
    assertEquals(0.6, SYRUP.fraction(Component.SUCROSE), 1e-12);
    assertEquals(70, SYRUP.saccharides().percent(), 1e-12);
    assertEquals(70, SYRUP.sweetSolids().percent(), 1e-12);
    assertEquals(List.of(Component.WATER, Component.SUCROSE, Component.GLUCOSE), SYRUP.present());
  }

  @Test
  void comparesByContent() {
    Composition same = Composition.ofMasses(Map.of(
        Component.SUCROSE,
        Mass.ofGrams(6),
        Component.GLUCOSE,
        Mass.ofGrams(1),
        Component.WATER,
        Mass.ofGrams(3)));
    assertEquals(SYRUP.fraction(Component.SUCROSE), same.fraction(Component.SUCROSE), 1e-15);
    assertEquals(
        Composition.of(Component.FAT), Composition.ofPercents(Map.of(Component.FAT, 100.0)));
    assertEquals(
        Composition.of(Component.FAT).hashCode(),
        Composition.ofPercents(Map.of(Component.FAT, 100.0)).hashCode());
    assertNotEquals(SYRUP, Composition.of(Component.FAT));
  }

  @Test
  void refusesWhatDoesNotAddUp() {
    assertThrows(
        IllegalArgumentException.class,
        () -> Composition.ofPercents(Map.of(Component.SUCROSE, 60.0)));
    assertThrows(
        IllegalArgumentException.class,
        () -> Composition.ofPercents(Map.of(Component.SUCROSE, 110.0, Component.WATER, -10.0)));
    assertThrows(
        IllegalArgumentException.class,
        () -> Composition.ofMasses(Map.of(Component.FAT, Mass.ZERO)));
    assertThrows(IllegalArgumentException.class, () -> Composition.mix(List.of()));
  }

  @Test
  void driesAndWets() {
    Composition dry = SYRUP.dry().orElseThrow();
    assertEquals(0, dry.water().fraction());
    assertEquals(60.0 / 70, dry.fraction(Component.SUCROSE), 1e-12);
    Composition wet = dry.withWaterFraction(Ratio.ofPercent(30));
    assertEquals(0.6, wet.fraction(Component.SUCROSE), 1e-12);
    assertTrue(Composition.of(Component.WATER).dry().isEmpty());
    assertThrows(
        IllegalArgumentException.class,
        () -> Composition.of(Component.WATER).withWaterFraction(Ratio.ofPercent(50)));
    assertEquals(Composition.of(Component.WATER), SYRUP.withWaterFraction(Ratio.ONE));
  }

  @Test
  void keepsOnlyWhatIsAskedFor() {
    Composition sugar = SYRUP.only(component -> component == Component.SUCROSE).orElseThrow();
    assertEquals(Composition.of(Component.SUCROSE), sugar);
    assertTrue(SYRUP.only(component -> component == Component.FAT).isEmpty());
  }

  @Test
  void namesEveryComponentOnce() {
    Set<String> words = new HashSet<>();
    for (Component component : Component.values()) {
      assertTrue(words.add(component.word()));
      assertEquals(component, Component.ofWord(component.word()).orElseThrow());
    }
    assertEquals(27, words.size());
    assertTrue(Component.ofWord("sugar").isEmpty());
  }

  @Test
  void keepsEveryMassInAMixtureWhateverTheOrder() {
    Chance.rounds(300, random -> {
      List<Portion> portions = new ArrayList<>();
      for (int n = 0; n < 5; n++) {
        portions.add(new Portion(Mass.ofGrams(1 + 1000 * random.nextDouble()), anything(random)));
      }
      Composition mixture = Composition.mix(portions);
      double total =
          portions.stream().mapToDouble(portion -> portion.mass().grams()).sum();
      double sum = 0;
      for (Component component : Component.values()) {
        double expected = portions.stream()
            .mapToDouble(portion -> portion.massOf(component).grams())
            .sum();
        assertEquals(expected, total * mixture.fraction(component), total * 1e-14);
        sum += mixture.fraction(component);
      }
      assertEquals(1, sum, 1e-14);
      Collections.shuffle(portions, random);
      Composition shuffled = Composition.mix(portions);
      for (Component component : Component.values()) {
        assertEquals(mixture.fraction(component), shuffled.fraction(component), 1e-14);
      }
    });
  }

  private static Composition anything(Random random) {
    Map<Component, Mass> masses = new EnumMap<>(Component.class);
    for (Component component : Component.values()) {
      if (random.nextBoolean()) {
        masses.put(component, Mass.ofGrams(100 * random.nextDouble()));
      }
    }
    masses.put(Component.WATER, Mass.ofGrams(1));
    return Composition.ofMasses(masses);
  }
}
