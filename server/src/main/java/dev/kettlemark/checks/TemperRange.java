package dev.kettlemark.checks;

import dev.kettlemark.analysis.Boiling;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Optional;

/**
 * Where a coat is in temper.
 *
 * @param name of the ingredient
 * @param range as its pantry entry says behind {@code tempers at}
 */
record TemperRange(String name, Band<Temperature> range) {

  /** The first coat among masses of which the pantry says where it is tempered. */
  static Optional<TemperRange> of(Subject subject, List<StageParcel> parcels) {
    return parcels.stream()
        .flatMap(parcel -> parcel.names().stream())
        .sorted()
        .flatMap(name -> subject.ingredient(name).flatMap(TemperRange::of).stream())
        .findFirst();
  }

  private static Optional<TemperRange> of(Ingredient ingredient) {
    return ingredient
        .facts()
        .first("tempers")
        .flatMap(fact -> fact.figure(Connective.AT, Unit.Dimension.TEMPERATURE))
        .map(figure -> new TemperRange(ingredient.name().value(), Boiling.band(figure.value())));
  }

  /** As a step writes it. */
  String shown() {
    return Display.trimmed(range.low().celsius(), 1) + "–"
        + Display.trimmed(range.high().celsius(), 1) + " °C";
  }
}
