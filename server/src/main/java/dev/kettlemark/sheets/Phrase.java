package dev.kettlemark.sheets;

import dev.kettlemark.quantity.Remark;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/** A piece of what a sheet says, before any language is chosen. */
public sealed interface Phrase {

  /** A sentence or word of the message files, with what stands in its places. */
  record Words(String key, List<Phrase> with) implements Phrase {

    public Words {
      with = List.copyOf(with);
    }
  }

  /** Words of the source, in whatever language it was written. */
  record Given(String text) implements Phrase {}

  /**
   * A display name.
   *
   * @param isInSentence whether a capital that only opens it is lowered
   */
  record Titled(Title title, boolean isInSentence) implements Phrase {}

  /** A text in English, such as the list of ingredients of a label. */
  record English(String text) implements Phrase {}

  /** A remark of the program, such as why something is unknown. */
  record Told(Remark remark) implements Phrase {}

  /** A figure. */
  record Value(SheetFigure figure) implements Phrase {}

  /**
   * A figure that a law has printed in a form of its own, such as one that is rounded to nothing.
   *
   * @param text empty for one that is unknown for a reason that is told elsewhere
   */
  record Printed(SheetFigure figure, String text) implements Phrase {}

  /** A day. */
  record Day(LocalDate date) implements Phrase {}

  /** Something to be told apart from the text around it, such as a state. */
  record Marked(Phrase phrase) implements Phrase {}

  /** Phrases with a space between, those that are empty left out. */
  record Together(List<Phrase> phrases) implements Phrase {

    public Together {
      phrases = List.copyOf(phrases);
    }
  }

  /** An enumeration. */
  record Listing(List<Phrase> phrases) implements Phrase {

    public Listing {
      phrases = List.copyOf(phrases);
    }
  }

  /** A sentence: starts with a capital and ends with a full stop. */
  record Sentence(Phrase phrase) implements Phrase {}

  /** Nothing to say. */
  static Phrase nothing() {
    return new Together(List.of());
  }

  static Phrase words(String key, Phrase... with) {
    return new Words(key, List.of(with));
  }

  static Phrase given(String text) {
    return new Given(text);
  }

  static Phrase told(Remark remark) {
    return new Told(remark);
  }

  static Phrase value(SheetFigure figure) {
    return new Value(figure);
  }

  static Phrase together(Phrase... phrases) {
    return new Together(List.of(phrases));
  }

  static Phrase sentence(String key, Phrase... with) {
    return new Sentence(words(key, with));
  }

  static Phrase sentence(Phrase phrase) {
    return new Sentence(phrase);
  }

  /** Whether nothing of it will be seen. */
  default boolean isNothing() {
    return this instanceof Together parts && parts.phrases().stream().allMatch(Phrase::isNothing);
  }

  /** All figures in it, in order of reading. */
  default Stream<SheetFigure> figures() {
    if (this instanceof Value value) {
      return Stream.of(value.figure());
    }
    if (this instanceof Printed printed) {
      return Stream.of(printed.figure());
    }
    return parts().stream().flatMap(Phrase::figures);
  }

  private List<Phrase> parts() {
    if (this instanceof Words words) {
      return words.with();
    }
    if (this instanceof Together together) {
      return together.phrases();
    }
    if (this instanceof Listing listing) {
      return listing.phrases();
    }
    if (this instanceof Marked marked) {
      return List.of(marked.phrase());
    }
    return this instanceof Sentence sentence ? List.of(sentence.phrase()) : List.of();
  }
}
