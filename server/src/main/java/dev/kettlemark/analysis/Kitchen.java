package dev.kettlemark.analysis;

import dev.kettlemark.library.Thresholds;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Length;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.StandardAtmosphere;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Where a formula is made.
 *
 * @param house the kitchen; empty for sea level and a usual room
 * @param pressure of the air there
 * @param room temperature of what stands about
 * @param warmed bowls and pans that something has warmed before they are used
 */
public record Kitchen(
    Optional<House> house, Pressure pressure, Temperature room, Map<String, Temperature> warmed) {

  /** Standard pressure at sea level (ISO 2533:1975). */
  public static final Pressure SEA_LEVEL = Pressure.ofPascals(101_325);

  public Kitchen {
    warmed = Map.copyOf(warmed);
  }

  public static Kitchen of(Optional<House> house) {
    Pressure pressure = house
        .flatMap(h ->
            StandardAtmosphere.pressureAt(Length.ofMetres(h.altitudeMetres())).toOptional())
        .orElse(SEA_LEVEL);
    return new Kitchen(house, pressure, house.map(House::room).orElse(House.USUAL_ROOM), Map.of());
  }

  /** What holds here of a threshold. */
  public <T> T threshold(Threshold<T> threshold) {
    return Thresholds.of(house, threshold);
  }

  /** A bowl or pan of the house, if it lists one of that name. */
  public Optional<House.Vessel> vessel(String name) {
    return house.flatMap(known -> known.vessel(name));
  }

  /** The bowl or pan that a stage names, if the house lists it. */
  public Optional<House.Vessel> vesselOf(Stage stage) {
    return stage.vessel().map(Located::value).flatMap(this::vessel);
  }

  /** The altitude in metres, 0 without a house. */
  public double altitudeMetres() {
    return house.map(House::altitudeMetres).orElse(0.0);
  }

  /** What a bowl or pan has before anything comes into it. */
  public Temperature temperatureOf(String vessel) {
    return warmed.getOrDefault(vessel, room);
  }

  Kitchen under(Pressure other) {
    return new Kitchen(house, other, room, warmed);
  }

  Kitchen warming(String vessel, Temperature temperature) {
    Map<String, Temperature> more = new HashMap<>(warmed);
    more.put(vessel, temperature);
    return new Kitchen(house, pressure, room, more);
  }
}
