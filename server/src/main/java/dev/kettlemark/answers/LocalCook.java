package dev.kettlemark.answers;

import dev.kettlemark.analysis.Experiment.StepPlace;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Derivation;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Length;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.StandardAtmosphere;
import dev.kettlemark.science.SyrupBoiling;
import java.util.List;

/**
 * Finds the cook temperature that leaves the same solids at another altitude.
 *
 * <p>The band is that of the weather: air pressure moves by some 3 % around the standard one.
 */
public final class LocalCook {

  /** Ordinary weather moves the pressure by this share; see {@link StandardAtmosphere}. */
  private static final Ratio WEATHER = Ratio.ofPercent(3);

  private LocalCook() {}

  /**
   * Takes a cook temperature from one altitude to another.
   *
   * @param syrup what is cooked; its own water is ignored
   * @param written the temperature that holds at {@code from}
   */
  public static Outcome<Answer> of(Composition syrup, Temperature written, Length from, Length to) {
    return Outcome.both(
            StandardAtmosphere.pressureAt(from),
            StandardAtmosphere.pressureAt(to),
            (there, here) -> of(syrup, written, from, there, to, here))
        .flatMap(answer -> answer);
  }

  /** The same answer as a change of a formula's step. */
  public static Answer inFormula(Answer answer, StepPlace place, Temperature target) {
    return new Answer(
        answer.instruction(),
        answer.values(),
        List.of(new Change.Cook(place, target)),
        answer.remarks(),
        answer.derivation());
  }

  /** The temperature alone, in full figures. */
  public static Outcome<Temperature> temperature(
      Composition syrup, Temperature written, Length from, Length to) {
    return Outcome.both(
            StandardAtmosphere.pressureAt(from),
            StandardAtmosphere.pressureAt(to),
            (there, here) -> SyrupBoiling.sameSolids(syrup, written, there, here))
        .flatMap(found -> found);
  }

  private static Outcome<Answer> of(
      Composition syrup,
      Temperature written,
      Length from,
      Pressure there,
      Length to,
      Pressure here) {
    Outcome<Ratio> water = SyrupBoiling.waterLeft(syrup, written, there);
    Outcome<Temperature> local = SyrupBoiling.sameSolids(syrup, written, there, here);
    return Outcome.both(water, local, (left, found) -> {
      Temperature target = CookTemperature.readable(found);
      Band<Temperature> band = Band.spanning(
          sameSolidsAt(syrup, written, there, here, WEATHER.complement().fraction(), found),
          sameSolidsAt(syrup, written, there, here, 1 + WEATHER.fraction(), found));
      Derivation derivation = SyrupBoiling.EQUATION.derive(
          Display.celsius(target) + " (" + Display.celsius(band) + " with the weather)",
          List.of(
              Derivation.given("cooked to", Display.celsius(written), "the question"),
              pressure(from, there),
              Derivation.given("water left there", Display.estimate(left), "the same equation"),
              pressure(to, here)));
      return new Answer(
          "Cook to " + Display.celsius(target) + " at " + metres(to) + " for the solids of "
              + Display.celsius(written) + " at " + metres(from),
          List.of(
              Value.of("cook-temperature", target, band.spanning(Band.of(target))),
              Value.of("cook-temperature-written", written),
              Value.estimate("water-left", left)),
          List.of(),
          CookTemperature.cautions(target),
          derivation);
    });
  }

  private static Temperature sameSolidsAt(
      Composition syrup,
      Temperature written,
      Pressure there,
      Pressure here,
      double weather,
      Temperature otherwise) {
    Pressure moved = Pressure.ofPascals(here.pascals() * weather);
    return SyrupBoiling.sameSolids(syrup, written, there, moved).orElse(otherwise);
  }

  private static Derivation pressure(Length altitude, Pressure pressure) {
    return StandardAtmosphere.EQUATION.derive(
        Display.fixed(pressure.kilopascals(), 1) + " kPa",
        List.of(Derivation.given("altitude", metres(altitude), "the question")));
  }

  private static String metres(Length length) {
    return Display.fixed(length.metres(), 0) + " m";
  }
}
