package dev.kettlemark.analysis;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What can be told of a mass: each figure has a word by which it is asked for. */
public enum Figure {
  MOISTURE("moisture"),
  WATER_ACTIVITY("water activity"),
  GRAINED_WATER_ACTIVITY("when grained"),
  DOCTOR_SHARE("doctor share"),
  SUCROSE_PER_WATER("sucrose per water"),
  SUPERSATURATION("saturation"),
  DRY_GLASS_TRANSITION("dry glass transition"),
  GLASS_TRANSITION("glass transition"),
  TEXTURE("texture"),
  SWEETNESS("sweetness"),
  ENERGY("energy"),
  DENSITY("density"),
  OVERRUN("overrun"),
  VOLUME("volume");

  private final String title;

  Figure(String title) {
    this.title = title;
  }

  /** The word of the language, such as {@code water-activity}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What a reader calls it. */
  public String title() {
    return title;
  }

  public static Optional<Figure> ofWord(String word) {
    return Arrays.stream(values()).filter(figure -> figure.word().equals(word)).findFirst();
  }
}
