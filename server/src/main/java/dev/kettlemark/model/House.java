package dev.kettlemark.model;

import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.quantity.Volume;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * A kitchen: where it lies and what it weighs, whips and moulds with.
 *
 * @param altitudeMetres above sea level; 0 where the text does not say
 * @param room the temperature of what stands about
 */
public record House(
    Located<String> name,
    Optional<String> title,
    double altitudeMetres,
    Temperature room,
    List<Scale> scales,
    List<Vessel> vessels,
    List<Mould> moulds,
    List<Frame> frames,
    Facts facts)
    implements Declaration {

  /** Room temperature where a house does not say; common practice, no source. */
  public static final Temperature USUAL_ROOM = Temperature.ofCelsius(21);

  public House {
    scales = List.copyOf(scales);
    vessels = List.copyOf(vessels);
    moulds = List.copyOf(moulds);
    frames = List.copyOf(frames);
  }

  /**
   * A scale.
   *
   * @param step smallest difference it shows, in grams
   * @param capacity most it can hold, in grams
   */
  public record Scale(Located<String> name, BigFraction step, BigFraction capacity) {}

  /**
   * A bowl or a pan.
   *
   * @param kind {@code bowl} or {@code pan}
   * @param holds its volume
   * @param whips the masses its whisk can whip
   * @param weighs its own mass
   */
  public record Vessel(
      String kind,
      Located<String> name,
      Optional<Volume> holds,
      Optional<Band<Mass>> whips,
      Optional<Mass> weighs) {}

  /** A mould with cavities of one volume. */
  public record Mould(Located<String> name, int pieces, Volume cavity) {}

  /** A frame that a slab is cast in; inner measures in millimetres. */
  public record Frame(Located<String> name, double length, double width, double height) {

    public Volume volume() {
      return Volume.ofMillilitres(length * width * height / 1000);
    }
  }

  public Optional<Vessel> vessel(String vesselName) {
    return vessels.stream().filter(v -> v.name().value().equals(vesselName)).findFirst();
  }

  public Optional<Mould> mould(String mouldName) {
    return moulds.stream().filter(m -> m.name().value().equals(mouldName)).findFirst();
  }

  public Optional<Frame> frame(String frameName) {
    return frames.stream().filter(f -> f.name().value().equals(frameName)).findFirst();
  }
}
