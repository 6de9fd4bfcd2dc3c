package dev.kettlemark.model;

import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.quantity.Volume;
import dev.kettlemark.text.Span;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * A kitchen: where it lies and what it weighs, whips and moulds with.
 *
 * @param altitudeMetres above sea level; 0 where the text does not say
 * @param room the temperature of what stands about
 * @param settings the thresholds that it sets for itself
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
    List<Setting> settings,
    Facts facts)
    implements Declaration {

  /** Room temperature where a house does not say; common practice, no source. */
  public static final Temperature USUAL_ROOM = Temperature.ofCelsius(21);

  public House {
    scales = List.copyOf(scales);
    vessels = List.copyOf(vessels);
    moulds = List.copyOf(moulds);
    frames = List.copyOf(frames);
    settings = List.copyOf(settings);
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

  /**
   * A threshold as a house sets it: {@code threshold total-tolerance 0.1 % "our scales"}.
   *
   * @param word the threshold's word as written
   * @param value as written; it may be of the wrong kind
   * @param reason why it is set so
   * @param source who says so
   * @param on the day on which it was set
   * @param span the whole line
   */
  public record Setting(
      Located<String> word,
      Located<Quantity> value,
      Optional<String> reason,
      Optional<String> source,
      Optional<LocalDate> on,
      Span span) {}

  /** The line by which it sets a threshold; of several the first. */
  public Optional<Setting> setting(Threshold<?> threshold) {
    for (Setting setting : settings) {
      if (setting.word().value().equals(threshold.word())
          && threshold.form().fits(setting.value().value())) {
        return Optional.of(setting);
      }
    }
    return Optional.empty();
  }

  /** What it sets a threshold to; empty where it leaves the usual value. */
  public <T> Optional<T> threshold(Threshold<T> threshold) {
    return setting(threshold).flatMap(setting -> threshold.of(setting.value().value()));
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
