package dev.kettlemark.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class BandAndOutcomeTest {

  @Test
  void spansInEitherOrder() {
    assertEquals(new Band<>(1, 3), Band.spanning(3, 1));
    assertEquals(new Band<>(1, 9), new Band<>(1, 3).spanning(new Band<>(2, 9)));
    assertThrows(IllegalArgumentException.class, () -> new Band<>(3, 1));
  }

  @Test
  void mapsFallingFunctionsToo() {
    assertEquals(new Band<>(-3, -1), new Band<>(1, 3).map(value -> -value));
  }

  @Test
  void includesItsEnds() {
    Band<Integer> band = new Band<>(1, 3);
    assertTrue(band.contains(1) && band.contains(3));
    assertFalse(band.contains(0) || band.contains(4));
    assertTrue(band.isWhollyBelow(4) && !band.isWhollyBelow(3));
    assertTrue(band.isWhollyAbove(0) && !band.isWhollyAbove(1));
    assertTrue(band.overlaps(new Band<>(3, 5)));
    assertFalse(band.overlaps(new Band<>(4, 5)));
    assertTrue(Band.of(2).isExact());
  }

  @Test
  void carriesTheReasonThroughEveryStep() {
    Outcome<Integer> unknown = Outcome.unknown(Reason.NOT_MODELLED, "no equation");
    Outcome<String> later =
        unknown.map(value -> value + 1).flatMap(value -> Outcome.known("x" + value));
    assertEquals(Outcome.unknown(Reason.NOT_MODELLED, "no equation"), later);
    assertEquals("fallback", later.orElse("fallback"));
    assertTrue(later.toOptional().isEmpty());
  }

  @Test
  void writesNumbersWithAPointEverywhere() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      Outcome<String> unknown =
          Outcome.unknown(Reason.OUTSIDE_VALID_RANGE, "%.1f %% is too much", 12.5);
      assertEquals("12.5 % is too much", unknown.fold(known -> known, Outcome.Unknown::because));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void takesAPlainReasonAsItStands() {
    Outcome<String> unknown = Outcome.unknown(Reason.NOT_MODELLED, "100 % of it is unknown");
    assertEquals("100 % of it is unknown", unknown.fold(known -> known, Outcome.Unknown::because));
  }

  @Test
  void combinesTwoAnswers() {
    Outcome<Integer> two = Outcome.known(2);
    Outcome<Integer> unknown = Outcome.unknown(Reason.NO_SOLUTION, "first");
    assertEquals(Outcome.known(5), Outcome.both(two, Outcome.known(3), Integer::sum));
    assertEquals(unknown, Outcome.both(unknown, two, Integer::sum));
    assertEquals(unknown, Outcome.both(two, unknown, Integer::sum));
  }

  @Test
  void callsBackOnlyWhenKnown() {
    List<Integer> seen = new ArrayList<>();
    Outcome.known(7).ifKnown(seen::add);
    Outcome.<Integer>unknown(Reason.NO_SOLUTION, "none").ifKnown(seen::add);
    assertEquals(List.of(7), seen);
  }

  @Test
  void derivesAsATree() {
    Derivation cook = Derivation.given("cook", "127 °C", "formula");
    Derivation water =
        new Derivation("water", "8.3 %", "W", "model", Confidence.MODEL, List.of(cook));
    assertEquals(2, water.depth());
    assertEquals(Confidence.GIVEN, water.inputs().get(0).confidence());
  }
}
