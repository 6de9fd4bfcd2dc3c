package dev.kettlemark.model;

import dev.kettlemark.text.Span;
import org.hipparchus.fraction.BigFraction;

/**
 * A mass taken over from an earlier stage.
 *
 * @param share how much of it, from 0 to 1
 * @param stage the name of the stage that left it
 * @param span the whole line
 */
public record TakeLine(BigFraction share, Located<String> stage, Span span) {

  TakeLine relocated(Span place) {
    return new TakeLine(share, stage.at(place), place);
  }
}
