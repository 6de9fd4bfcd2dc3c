package dev.kettlemark.model;

import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * A piece that is sold: a centre with what lies on and around it.
 *
 * @param parts centre first, then layers, fillings, wafers and coats in the order written
 * @param pieces how many to make
 * @param loss the share of the centre's mass that stays in bowls and trimmings
 */
public record Product(
    Located<String> name,
    Optional<String> title,
    List<Part> parts,
    Optional<Located<BigFraction>> pieces,
    Optional<Located<BigFraction>> loss,
    Facts facts)
    implements Declaration {

  public Product {
    parts = List.copyOf(parts);
  }

  /**
   * A part of the piece.
   *
   * @param role {@code centre}, {@code layer}, {@code coat}, {@code filling} or {@code wafer}
   * @param measure a weight per piece, or a share of the centre or of the finished piece
   * @param material the formula or ingredient it is made of; empty where the text does not say
   * @param spare the share that is needed on top but comes back, such as for a coating bath
   * @param span the whole line
   */
  public record Part(
      String role,
      Located<Measure> measure,
      Optional<Located<String>> material,
      Optional<BigFraction> spare,
      Span span) {}

  /** The same product with another number of pieces. */
  public Product withPieces(BigFraction count) {
    Located<BigFraction> changed =
        pieces.map(p -> p.map(old -> count)).orElseGet(() -> new Located<>(count, name.span()));
    return new Product(name, title, parts, Optional.of(changed), loss, facts);
  }

  public Optional<Part> centre() {
    return parts.stream().filter(part -> part.role().equals("centre")).findFirst();
  }
}
