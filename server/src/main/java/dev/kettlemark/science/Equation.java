package dev.kettlemark.science;

import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Derivation;
import java.util.List;

/**
 * How an equation is named to the reader wherever a result of it is explained.
 *
 * @param title what the equation gives, such as "water left after cooking"
 * @param formula the equation as shown to the reader
 * @param source author, year and place, with "from memory" where the figures were not read again
 * @param confidence how far a result may be trusted
 */
public record Equation(String title, String formula, String source, Confidence confidence) {

  /**
   * Returns the node of a derivation tree for one result of this equation.
   *
   * @param value the result as shown to the reader, with its unit
   * @param inputs what the equation took, in the order of reading
   */
  public Derivation derive(String value, List<Derivation> inputs) {
    return new Derivation(title, value, formula, source, confidence, inputs);
  }
}
