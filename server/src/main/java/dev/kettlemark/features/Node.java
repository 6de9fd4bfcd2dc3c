package dev.kettlemark.features;

import dev.kettlemark.library.Place;
import java.util.List;

/**
 * A stage, a formula, a product or an ingredient in a tree of what goes into what.
 *
 * @param symbol by which it is found again
 * @param kind what it is
 * @param detail a few words, such as what it weighs; possibly empty
 * @param all the lines of it
 * @param name its name where it is declared
 */
public record Node(Symbol symbol, Outline.Kind kind, String detail, Place all, Place name) {

  /** A node and the places of the lines that link it with another. */
  public record Link(Node node, List<Place> lines) {

    public Link {
      lines = List.copyOf(lines);
    }
  }
}
