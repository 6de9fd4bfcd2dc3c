package dev.kettlemark.answers;

import static dev.kettlemark.answers.Workbench.because;
import static dev.kettlemark.answers.Workbench.figure;
import static dev.kettlemark.answers.Workbench.known;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Length;
import dev.kettlemark.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LocalCookTest {

  private static final Composition SUCROSE = Composition.of(Component.SUCROSE);
  private static final Length SEA = Length.ofMetres(0);

  private static Answer answer(double celsius, double from, double to) {
    return known(LocalCook.of(
        SUCROSE, Temperature.ofCelsius(celsius), Length.ofMetres(from), Length.ofMetres(to)));
  }

  /** Computed apart from this program with the equations of Starzak and Peacock 1997 and ISO 2533. */
  @ParameterizedTest
  @CsvSource({"118, 112.2", "127, 120.9", "150, 143.2"})
  void cooksLessHotAtAMile(double written, double local) {
    assertEquals(local, figure(answer(written, 0, 1609), "cook-temperature"), 0.051);
  }

  /** 1 °C for 300 m holds for what is nearly water; rule as printed in McGee 2004. */
  @Test
  void followsTheKitchenRuleForAThinSyrup() {
    assertEquals(102 - 5, figure(answer(102, 0, 1500), "cook-temperature"), 0.3);
  }

  @ParameterizedTest
  @CsvSource({"112, 500", "121, 1500", "143, 2240", "150, 3000"})
  void comesBackWhereItStarted(double written, double metres) {
    Length there = Length.ofMetres(metres);
    Temperature local =
        known(LocalCook.temperature(SUCROSE, Temperature.ofCelsius(written), SEA, there));
    Temperature back = known(LocalCook.temperature(SUCROSE, local, there, SEA));
    assertEquals(written, back.celsius(), 1e-6);
  }

  @Test
  void carriesTheWeatherAsItsBand() {
    Value target = answer(143, 0, 1609).value("cook-temperature").orElseThrow();
    assertTrue(target.low() < target.figure() && target.figure() < target.high());
    assertTrue(target.high() - target.low() < 4, "" + target);
  }

  @Test
  void isUnknownBelowTheBoilAndAboveTheAir() {
    assertTrue(because(LocalCook.of(SUCROSE, Temperature.ofCelsius(60), SEA, Length.ofMetres(100)))
        .contains("nothing boils at 60.0 °C"));
    assertTrue(
        because(LocalCook.of(SUCROSE, Temperature.ofCelsius(120), SEA, Length.ofMetres(50_000)))
            .contains("50000 m"));
  }
}
