package dev.kettlemark.checks;

import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Product;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports a coat, filling or layer in percent that does not say of what.
 *
 * <p>Of 28 % on a centre of 42 g, one reader makes 11.8 g of chocolate and another 16.3 g.
 */
public final class CoatWithoutBasis implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "coat-without-basis", "a coat in percent does not say whether of the centre or of the piece");

  private static final Set<String> AROUND = Set.of("coat", "filling", "layer", "wafer");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.declaration().stream()
        .flatMap(d -> d instanceof Product product ? Stream.of(product) : Stream.empty())
        .flatMap(product -> {
          Piece piece = Piece.of(product);
          return product.parts().stream()
              .filter(part -> AROUND.contains(part.role()))
              .flatMap(
                  part -> bare(part).map(share -> finding(subject, piece, part, share)).stream());
        })
        .toList();
  }

  private static Optional<BigFraction> bare(Product.Part part) {
    return part.measure().value() instanceof Measure.Share share
            && share.basis().isEmpty()
        ? Optional.of(share.fraction())
        : Optional.empty();
  }

  private static Finding finding(
      Subject subject, Piece piece, Product.Part part, BigFraction share) {
    String written = Columns.shown(part.measure().span().of(subject.text()));
    Optional<String> ofFinished = piece.ofFinished(share).map(CoatWithoutBasis::grams);
    Optional<String> ofCentre = piece.ofCentre(share).map(CoatWithoutBasis::grams);
    String both = ofFinished.isPresent() && ofCentre.isPresent()
        ? ": of finished it is " + ofFinished.get() + " a piece, of centre " + ofCentre.get()
        : "";
    return INFO.at(part.measure().span(), "%s of what%s", written, both)
        .because("a share of the finished piece is the larger one, for the piece holds the "
            + part.role())
        .withFix(added("finished", part, ofFinished))
        .withFix(added("centre", part, ofCentre));
  }

  private static Fix added(String basis, Product.Part part, Optional<String> grams) {
    return Fix.insert(
        "Add `of " + basis + "`" + grams.map(g -> ", " + g + " a piece").orElse(""),
        part.measure().span().end(),
        " of " + basis);
  }

  private static String grams(BigFraction grams) {
    return Display.mass(Mass.ofGrams(grams.doubleValue()));
  }

  /**
   * What is known of a piece besides its bare percentages.
   *
   * @param centre the weight of the centre in grams
   * @param weighed the weight of all parts that are weights or shares of the centre, in grams
   * @param shared the sum of the shares of the finished piece
   */
  private record Piece(Optional<BigFraction> centre, BigFraction weighed, BigFraction shared) {

    static Piece of(Product product) {
      Optional<BigFraction> centre =
          product.centre().flatMap(Piece::grams).filter(grams -> grams.signum() > 0);
      BigFraction weighed = BigFraction.ZERO;
      BigFraction shared = BigFraction.ZERO;
      for (Product.Part part : product.parts()) {
        weighed = weighed
            .add(grams(part).orElse(BigFraction.ZERO))
            .add(share(part, basis -> basis.words().equals("centre"))
                .multiply(centre.orElse(BigFraction.ZERO)));
        shared = shared.add(share(part, Basis.Finished.class::isInstance));
      }
      return new Piece(centre, weighed, shared);
    }

    /** What is c of the piece, where c of the piece and all its other parts make the piece. */
    Optional<BigFraction> ofFinished(BigFraction share) {
      BigFraction left = BigFraction.ONE.subtract(shared).subtract(share);
      return centre
          .filter(grams -> left.signum() > 0)
          .map(grams -> weighed.divide(left).multiply(share));
    }

    Optional<BigFraction> ofCentre(BigFraction share) {
      return centre.map(share::multiply);
    }

    private static Optional<BigFraction> grams(Product.Part part) {
      return part.measure().value() instanceof Measure.Weight weight
          ? Optional.of(weight.grams())
          : Optional.empty();
    }

    /** A part's share if its basis passes, else nothing. */
    private static BigFraction share(Product.Part part, Predicate<Basis> isOf) {
      return part.measure().value() instanceof Measure.Share share
              && share.basis().filter(isOf).isPresent()
          ? share.fraction()
          : BigFraction.ZERO;
    }
  }
}
