package dev.kettlemark.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Temperature;
import org.junit.jupiter.api.Test;

class CoolingTest {

  private static final Band<Temperature> ROOM = Band.of(Temperature.ofCelsius(20));

  @Test
  void fallsByNewtonsLawOfCooling() {
    // After one time constant 1/e = 36.8 % of the difference is left (definition).
    Band<Temperature> after = Cooling.after(Band.of(Temperature.ofCelsius(120)), ROOM, 20 * 60);
    assertEquals(20 + 100 / Math.E, after.low().celsius(), 1e-6);
    assertEquals(20 + 100 * Math.exp(-1.0 / 6), after.high().celsius(), 1e-6);
  }

  @Test
  void startsWhereItIsAndEndsAtThePlace() {
    Band<Temperature> start = new Band<>(Temperature.ofCelsius(60), Temperature.ofCelsius(80));
    assertEquals(start, Cooling.after(start, ROOM, 0));
    assertEquals(20, Cooling.after(start, ROOM, 1e6).high().celsius(), 1e-6);
    assertEquals(20, Cooling.after(start, ROOM, 1e300).low().celsius(), 1e-6);
  }

  @Test
  void warmsWhatLiesInTheWarmth() {
    Band<Temperature> oven = Band.of(Temperature.ofCelsius(90));
    Band<Temperature> after = Cooling.after(ROOM, oven, 3600);
    assertTrue(after.low().celsius() > 20 && after.high().celsius() < 90);
  }
}
