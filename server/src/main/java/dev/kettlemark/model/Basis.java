package dev.kettlemark.model;

/** What a percentage is a percentage of. */
public sealed interface Basis {

  /** All that the formula weighs in. */
  record Charge() implements Basis {}

  /** What the formula weighs when it is done. */
  record Finished() implements Basis {}

  /** A stage, an ingredient, or a basis that the formula declares. */
  record Named(Located<String> name) implements Basis {}

  default String words() {
    if (this instanceof Named named) {
      return named.name().value();
    }
    return this instanceof Charge ? "charge" : "finished";
  }

  static Basis of(Located<String> word) {
    return switch (word.value()) {
      case "charge" -> new Charge();
      case "finished" -> new Finished();
      default -> new Named(word);
    };
  }
}
