package dev.kettlemark.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** A cold bowl takes its heat once, however often something is poured into it. */
class WarmBowlTest {

  private static final String HOUSE = """
      house bench
        bowl steel holds 5 L weighs 2 kg
      """;

  private static final String FORMULA = """
      formula f
        batch 1000 g
      stage body in steel
        20 % water at 20 °C
        40 % glucose-syrup-42 at 100 °C
        40 % honey at 100 °C
      """;

  @Test
  void pouringInTwoTimesCoolsAsMuchAsPouringAtOnce() {
    double atOnce = coolest("  pour glucose-syrup-42, honey into water\n");
    double twice = coolest("  pour glucose-syrup-42 into water\n  pour honey into water\n");
    // The 5 % that are lost while pouring are lost of each stream, and so a little less in the
    // second way.
    assertEquals(atOnce, twice, 1.5);
  }

  @Test
  void aBowlThatCameToTheHeatOfItsMassTakesNoMore() {
    double cold = coolest("  pour glucose-syrup-42, honey into water\n");
    double warm = coolest("  warm to 100 °C\n  pour glucose-syrup-42, honey into water\n");
    assertTrue(warm > cold + 10, cold + " and " + warm);
  }

  private static double coolest(String steps) {
    return Bench.left(HOUSE + FORMULA + steps, "body").temperature().low().celsius();
  }
}
