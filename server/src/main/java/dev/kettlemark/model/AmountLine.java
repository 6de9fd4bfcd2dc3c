package dev.kettlemark.model;

import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.text.Span;
import java.util.Optional;

/**
 * One thing that is weighed in.
 *
 * @param measure how much
 * @param written the figure as written; empty for {@code q.s.} and for malformed figures
 * @param ingredient the name of an ingredient or of a formula
 * @param at the temperature at which it is weighed in; empty for room temperature
 * @param span the whole line
 */
public record AmountLine(
    Located<Measure> measure,
    Optional<Quantity> written,
    Located<String> ingredient,
    Optional<Located<Temperature>> at,
    Span span) {

  /** The same amount with every place moved to one span. */
  AmountLine relocated(Span place) {
    return new AmountLine(
        measure.at(place), written, ingredient.at(place), at.map(t -> t.at(place)), place);
  }
}
