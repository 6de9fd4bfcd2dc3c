package dev.kettlemark.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.Chance;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.sheets.Difference.Kind;
import dev.kettlemark.sheets.SheetFigure.Reach;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DifferenceTest {

  private static SheetFigure figure(double low, double best, double high) {
    return SheetFigure.model("x", SheetUnit.PERCENT, Outcome.known(new Reach(low, best, high)), 1);
  }

  /** By the definition of the kinds; intervals drawn by hand. */
  @ParameterizedTest
  @CsvSource({
    "9, 10, 11,   9, 10, 11,      NONE",
    "9, 10, 11,   9.5, 10.5, 11.5, WITHIN",
    "9, 10, 11,   10.8, 11.8, 12.8, OPEN",
    "9, 10, 11,   12, 13, 14,     MORE",
    "9, 10, 11,   6, 7, 8,        LESS",
    "10, 10, 10,  10.04, 10.04, 10.04, NONE",
    "10, 10, 10,  10.4, 10.4, 10.4, MORE"
  })
  void tellsWhatTwoBandsAllow(
      double low, double best, double high, double low2, double best2, double high2, Kind kind) {
    assertEquals(
        kind, Difference.of(figure(low, best, high), figure(low2, best2, high2)).kind());
  }

  @Test
  void comparesNothingWithTheUnknown() {
    SheetFigure unknown = SheetFigure.model(
        "x", SheetUnit.PERCENT, Outcome.unknown(Reason.NOT_MODELLED, "no equation"), 1);
    assertEquals(Kind.UNKNOWN, Difference.of(figure(1, 2, 3), unknown).kind());
    assertEquals(Kind.UNKNOWN, Difference.of(unknown, unknown).kind());
  }

  @Test
  void isTheSameFromTheOtherSide() {
    Chance.rounds(2000, random -> {
      SheetFigure one = any(random);
      SheetFigure other = any(random);
      assertEquals(Difference.of(one, other).mirrored(), Difference.of(other, one));
    });
  }

  private static SheetFigure any(Random random) {
    double best = random.nextInt(40);
    double slack = random.nextInt(6);
    return figure(best - slack, best, best + slack);
  }
}
