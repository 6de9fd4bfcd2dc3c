package dev.kettlemark.science;

import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.quantity.TemperatureDifference;
import java.util.Locale;

/**
 * The bite of an ungrained sugar mass, by how far the room lies above its glass transition, hardest first.
 *
 * <p>The limits are an own estimate on ranges of common practice: up to 10 °C above its glass transition a mass is
 * leathery, up to 40 °C chewy, beyond that soft.
 */
public enum Texture {
  /** Breaks with a crunch; keeps if the glass transition lies 10 °C above the room. */
  GLASSY(Double.NEGATIVE_INFINITY),
  /** Leathery, neither crisp nor chewy. */
  BORDERLINE(0),
  /** Bends and chews. */
  CHEWY(10),
  /** Flows unless gel, fat or grain holds it up. */
  SOFT(40);

  /** Names the classes in a derivation. */
  public static final Equation EQUATION = new Equation(
      "texture of the sugar phase",
      "room − Tg: up to 0 glassy, to 10 leathery, to 40 chewy, beyond soft",
      "own estimate on ranges of common practice",
      Confidence.RULE_OF_THUMB);

  /** A glass keeps on the shelf if its transition lies this far above the room; an own estimate. */
  public static final TemperatureDifference SHELF_MARGIN = TemperatureDifference.ofCelsius(10);

  /** The room lies more than this many °C above the glass transition. */
  private final double above;

  Texture(double above) {
    this.above = above;
  }

  /** What a cook calls it. */
  public String word() {
    return this == BORDERLINE ? "leathery" : name().toLowerCase(Locale.ROOT);
  }

  /** Returns the texture at the temperature of the room. */
  public static Texture of(Temperature glassTransition, Temperature room) {
    double difference = room.minus(glassTransition).celsius();
    Texture found = GLASSY;
    for (Texture texture : values()) {
      if (difference > texture.above) {
        found = texture;
      }
    }
    return found;
  }

  /** Returns the textures that a band of glass transitions allows. */
  public static Band<Texture> of(Band<Temperature> glassTransition, Temperature room) {
    return glassTransition.map(one -> of(one, room));
  }

  /** Returns how far the glass transition lies above the room; negative where the mass is no glass. */
  public static Band<TemperatureDifference> margin(
      Band<Temperature> glassTransition, Temperature room) {
    return glassTransition.map(one -> one.minus(room));
  }
}
