package dev.kettlemark.syntax;

import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Unit;
import dev.kettlemark.text.Span;
import java.time.LocalDate;
import java.util.Optional;

/** The smallest things on a line. */
public sealed interface Atom extends Placed<Atom> {

  /**
   * A number with what belongs to it.
   *
   * @param number the number, range or fraction as written, possibly malformed
   * @param numberSpan where it stands
   * @param unit the unit with its place; empty where none stands
   * @param quantity its meaning; empty where the number is malformed
   */
  record QuantityAtom(
      String number, Span numberSpan, Optional<Word> unit, Optional<Quantity> quantity, Span span)
      implements Atom {
    @Override
    public QuantityAtom shiftedBy(int distance) {
      return new QuantityAtom(
          number,
          numberSpan.shiftedBy(distance),
          unit.map(word -> word.shiftedBy(distance)),
          quantity,
          span.shiftedBy(distance));
    }

    /** Whether it has a value and no unit. */
    public boolean lacksUnit() {
      return quantity.isPresent() && unit.isEmpty();
    }

    /** Whether a unit of this dimension was written. */
    public boolean measures(Unit.Dimension dimension) {
      return unit.flatMap(word -> Unit.of(word.text()))
          .filter(u -> u.measures(dimension))
          .isPresent();
    }
  }

  /** A plain word: a name, a verb, a state. */
  record NameAtom(String text, Span span) implements Atom {
    @Override
    public Atom shiftedBy(int distance) {
      return new NameAtom(text, span.shiftedBy(distance));
    }
  }

  /** A quoted text, without its quotes. */
  record TextAtom(String text, boolean closed, Span span) implements Atom {
    @Override
    public Atom shiftedBy(int distance) {
      return new TextAtom(text, closed, span.shiftedBy(distance));
    }
  }

  /** A date; empty where the calendar has no such day. */
  record DateAtom(Optional<LocalDate> date, Span span) implements Atom {
    @Override
    public Atom shiftedBy(int distance) {
      return new DateAtom(date, span.shiftedBy(distance));
    }
  }

  /** A rate such as {@code per kg}. */
  record RateAtom(String unit, Span span) implements Atom {
    @Override
    public Atom shiftedBy(int distance) {
      return new RateAtom(unit, span.shiftedBy(distance));
    }
  }

  /** A word of the grammar where it has no duty. */
  record ReservedAtom(String text, Span span) implements Atom {
    @Override
    public Atom shiftedBy(int distance) {
      return new ReservedAtom(text, span.shiftedBy(distance));
    }
  }

  /** A character that the language does not know. */
  record StrayAtom(String text, Span span) implements Atom {
    @Override
    public Atom shiftedBy(int distance) {
      return new StrayAtom(text, span.shiftedBy(distance));
    }
  }
}
