package dev.kettlemark.quantity;

import java.util.List;

/**
 * Where a number comes from, as a tree that hover, terminal and sheets render alike.
 *
 * @param title what the number is, such as "water left"
 * @param value the number as shown to the reader, with its unit
 * @param equation the equation as shown to the reader; empty for a given value
 * @param source who published the equation or who gave the value
 * @param confidence how far the number may be trusted
 * @param inputs the numbers that the equation took, in the order of reading
 */
public record Derivation(
    String title,
    String value,
    String equation,
    String source,
    Confidence confidence,
    List<Derivation> inputs) {

  public Derivation {
    inputs = List.copyOf(inputs);
  }

  /** Returns the leaf for a value that the user wrote or measured. */
  public static Derivation given(String title, String value, String source) {
    return new Derivation(title, value, "", source, Confidence.GIVEN, List.of());
  }

  /** Returns the number of nodes from here to the deepest leaf, at least one. */
  public int depth() {
    return 1 + inputs.stream().mapToInt(Derivation::depth).max().orElse(0);
  }
}
