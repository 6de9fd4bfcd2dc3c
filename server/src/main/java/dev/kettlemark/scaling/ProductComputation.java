package dev.kettlemark.scaling;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Scope;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Product;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Remark;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * Computes what the pieces of a product weigh and need.
 *
 * <p>With a centre of c grams, parts of g grams, parts of share s of the centre and parts of share f of
 * the finished piece, the piece weighs (c + Σg + c·Σs) / (1 − Σf), exact.
 */
final class ProductComputation {

  private final Product product;
  private final Scope scope;

  ProductComputation(Product product, Scope scope) {
    this.product = product;
    this.scope = scope;
  }

  ComputedProduct compute() {
    Outcome<BigFraction> centre = product
        .centre()
        .map(part -> weight(part.measure().value()))
        .orElseGet(() -> Outcome.unknown(Reason.MISSING_FIGURE, "the product has no centre"));
    Outcome<BigFraction> piece = centre.flatMap(this::pieceWeight);
    List<ComputedProduct.PartWeight> parts = new ArrayList<>();
    List<ComputedProduct.Need> needs = new ArrayList<>();
    for (Product.Part part : product.parts()) {
      Outcome<BigFraction> grams =
          Outcome.both(centre, piece, (c, p) -> partWeight(part, c, p)).flatMap(g -> g);
      parts.add(new ComputedProduct.PartWeight(
          part,
          grams.map(ProductComputation::mass),
          Outcome.both(grams, piece, (g, p) -> Ratio.ofFraction(g.divide(p).doubleValue()))));
      grams.toOptional().flatMap(g -> need(part, g)).ifPresent(needs::add);
    }
    return new ComputedProduct(product, parts, piece.map(ProductComputation::mass), needs);
  }

  private Outcome<BigFraction> pieceWeight(BigFraction centre) {
    BigFraction inside = BigFraction.ZERO;
    BigFraction ofFinished = BigFraction.ZERO;
    for (Product.Part part : product.parts()) {
      Measure measure = part.measure().value();
      if (measure instanceof Measure.Weight weight) {
        inside = inside.add(weight.grams());
      } else if (measure instanceof Measure.Share share && isOfFinished(share)) {
        ofFinished = ofFinished.add(share.fraction());
      } else if (measure instanceof Measure.Share share) {
        inside = inside.add(share.fraction().multiply(centre));
      } else {
        return Outcome.unknown(
            Reason.MISSING_FIGURE, "the weight of the %s cannot be read", Remark.of(part.role()));
      }
    }
    if (ofFinished.compareTo(BigFraction.ONE) >= 0) {
      return Outcome.unknown(
          Reason.CONTRADICTION, "the coats alone make up the whole piece or more");
    }
    if (inside.signum() <= 0) {
      return Outcome.unknown(Reason.CONTRADICTION, "the piece weighs nothing");
    }
    return Outcome.known(inside.divide(BigFraction.ONE.subtract(ofFinished)));
  }

  private static Outcome<BigFraction> partWeight(
      Product.Part part, BigFraction centre, BigFraction piece) {
    Measure measure = part.measure().value();
    if (measure instanceof Measure.Share share) {
      return Outcome.known(share.fraction().multiply(isOfFinished(share) ? piece : centre));
    }
    return weight(measure);
  }

  private static Outcome<BigFraction> weight(Measure measure) {
    return measure instanceof Measure.Weight weight
        ? Outcome.known(weight.grams())
        : Outcome.unknown(Reason.MISSING_FIGURE, "the weight of the centre is not given in grams");
  }

  /** A share without a basis counts on the centre; a rule asks for the basis to be written. */
  private static boolean isOfFinished(Measure.Share share) {
    return share.basis().filter(Basis.Finished.class::isInstance).isPresent();
  }

  private Optional<ComputedProduct.Need> need(Product.Part part, BigFraction grams) {
    if (product.pieces().isEmpty() || part.material().isEmpty()) {
      return Optional.empty();
    }
    BigFraction pieces = product.pieces().get().value();
    BigFraction onPieces = pieces.multiply(grams);
    boolean isCentre = part.role().equals("centre");
    BigFraction loss =
        isCentre ? product.loss().map(Located::value).orElse(BigFraction.ZERO) : BigFraction.ZERO;
    if (pieces.signum() <= 0 || loss.signum() < 0 || loss.compareTo(BigFraction.ONE) >= 0) {
      return Optional.empty();
    }
    BigFraction withLoss = onPieces
        .divide(BigFraction.ONE.subtract(loss))
        .multiply(BigFraction.ONE.add(part.spare().orElse(BigFraction.ZERO)));
    String material = part.material().get().value();
    return Optional.of(new ComputedProduct.Need(
        part.role(),
        material,
        mass(onPieces),
        mass(withLoss),
        scaling(
            material,
            new Target.Finished(withLoss.multiply(BigFraction.ONE.subtract(loss)), loss))));
  }

  private Outcome<Scaling> scaling(String material, Target target) {
    Optional<ComputedFormula> formula = scope.ask(Formulas.computed(material));
    return formula
        .map(computed -> Scaling.of(computed, target))
        .orElseGet(() -> Outcome.unknown(Reason.NOT_MODELLED, "`%s` is not a formula", material));
  }

  private static Mass mass(BigFraction grams) {
    return Mass.ofGrams(grams.doubleValue());
  }
}
