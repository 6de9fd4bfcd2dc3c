package dev.kettlemark.bench;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Portion;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.GlassTransition;
import dev.kettlemark.science.HeatBalance;
import dev.kettlemark.science.Parcel;
import dev.kettlemark.science.PouredTogether;
import dev.kettlemark.science.SyrupBoiling;
import dev.kettlemark.science.Vessel;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The three models that a formula asks most. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ScienceBenchmark {

  private final Composition syrup = Composition.ofPercents(Map.of(
      Component.SUCROSE, 55.0,
      Component.GLUCOSE, 7.0,
      Component.MALTOSE, 5.0,
      Component.MALTOTRIOSE, 4.0,
      Component.HIGHER_SACCHARIDES, 19.0,
      Component.WATER, 10.0));

  private final Composition foam = Composition.ofPercents(
      Map.of(Component.WATER, 70.0, Component.PROTEIN, 10.0, Component.SUCROSE, 20.0));

  private final List<Parcel> parcels = List.of(parcel(syrup, 600, 121), parcel(foam, 150, 22));

  private final Optional<Vessel> bowl =
      Optional.of(Vessel.ofSteel(Mass.ofKilograms(1), Temperature.ofCelsius(22)));

  @Benchmark
  public Outcome<Temperature> boilingPoint() {
    return SyrupBoiling.boilingPoint(syrup, Pressure.STANDARD_ATMOSPHERE);
  }

  @Benchmark
  public Outcome<PouredTogether> heatBalance() {
    return HeatBalance.of(parcels, bowl, Ratio.ofPercent(5), Pressure.STANDARD_ATMOSPHERE);
  }

  @Benchmark
  public Outcome<Band<Temperature>> glassTransition() {
    return GlassTransition.of(syrup);
  }

  private static Parcel parcel(Composition composition, double grams, double celsius) {
    return new Parcel(
        new Portion(Mass.ofGrams(grams), composition), Band.of(Temperature.ofCelsius(celsius)));
  }
}
