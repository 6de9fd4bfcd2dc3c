package dev.kettlemark.checks;

import dev.kettlemark.analysis.Boiling;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Temperature;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A shelf life that is not said to be spent in the cold.
 *
 * @param fact the line
 * @param time how long
 */
record RoomShelf(Product product, Statement fact, Located<Quantity> time) {

  /** A cold store is no warmer; Regulation (EC) No 852/2004 leaves it to the house, 8 °C is common practice. */
  private static final Temperature COLD = Temperature.ofCelsius(8);

  private static final Set<String> HOLDING = Set.of("centre", "layer", "filling");

  /** Empty for other sections, and where nothing is said or the piece is kept cold. */
  static Optional<RoomShelf> of(Subject subject) {
    return subject
        .declaration()
        .flatMap(d -> d instanceof Product product ? Optional.of(product) : Optional.empty())
        .flatMap(product -> product
            .facts()
            .first("shelf")
            .filter(shelf -> !isCold(shelf))
            .flatMap(shelf -> shelf
                .objectFigure(Unit.Dimension.TIME)
                .map(time -> new RoomShelf(product, shelf, time))));
  }

  private static boolean isCold(Statement shelf) {
    return Stream.of(Connective.AT, Connective.BELOW)
        .flatMap(word -> shelf.figure(word, Unit.Dimension.TEMPERATURE).stream())
        .anyMatch(store -> Boiling.band(store.value()).high().compareTo(COLD) <= 0);
  }

  /** What may hold so much water that something grows in it. */
  Stream<Located<String>> parts() {
    return product.parts().stream()
        .filter(part -> HOLDING.contains(part.role()))
        .flatMap(part -> part.material().stream());
  }

  double seconds() {
    return time.value().highInBase().doubleValue();
  }

  Fix keptCold() {
    return fact.figure(Connective.AT, Unit.Dimension.TEMPERATURE)
        .map(store -> Fix.replace("Keep it cold, at 2–5 °C", store.span(), "2-5 °C"))
        .orElseGet(() -> Fix.insert("Keep it cold, at 2–5 °C", time.span().end(), " at 2-5 °C"));
  }
}
