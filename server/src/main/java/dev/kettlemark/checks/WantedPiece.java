package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Volume;
import dev.kettlemark.text.Span;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The piece that a formula or a product is to give.
 *
 * @param formula what it is made of
 * @param mass what it weighs
 * @param weight where that is written in this section
 * @param density of the mass
 * @param mould the mould that it is filled into, as named in this section; empty where it is none
 */
record WantedPiece(
    ComputedFormula formula,
    Mass mass,
    Span weight,
    BulkDensity density,
    Optional<Located<String>> mould) {

  static Optional<WantedPiece> of(Subject subject) {
    return subject
        .declaration()
        .flatMap(declaration -> declaration instanceof Product product
            ? ofProduct(subject, product)
            : subject.formula().flatMap(WantedPiece::ofFormula));
  }

  private static Optional<WantedPiece> ofProduct(Subject subject, Product product) {
    Optional<Product.Part> centre = product.centre();
    Optional<ComputedFormula> formula = centre
        .flatMap(Product.Part::material)
        .flatMap(name -> subject.ask(Formulas.computed(name.value())));
    Optional<Located<String>> tool = product
        .facts()
        .all("make")
        .flatMap(make -> make.names(Connective.IN).stream())
        .findFirst();
    return formula.flatMap(made -> BulkDensity.of(made)
        .flatMap(density -> centre
            .map(Product.Part::measure)
            .flatMap(measure -> measure.value() instanceof Measure.Weight weight
                ? Optional.of(new WantedPiece(
                    made,
                    Mass.ofGrams(weight.grams().doubleValue()),
                    measure.span(),
                    density,
                    tool.filter(name -> mould(made, name.value()).isPresent())))
                : Optional.empty())));
  }

  private static Optional<WantedPiece> ofFormula(ComputedFormula formula) {
    Optional<Located<String>> mould = formula
        .formula()
        .steps()
        .filter(step -> step.is("deposit") || step.is("pipe"))
        .flatMap(step -> step.names(Connective.INTO).stream())
        .filter(name -> mould(formula, name.value()).isPresent())
        .findFirst();
    return formula
        .formula()
        .facts()
        .first("makes")
        .flatMap(makes -> makes.figure(Connective.OF, Unit.Dimension.MASS))
        .filter(each -> each.value().middle().signum() > 0)
        .flatMap(each -> BulkDensity.of(formula)
            .map(density -> new WantedPiece(
                formula,
                Mass.ofGrams(each.value().middleInBase().doubleValue()),
                each.span(),
                density,
                mould)));
  }

  static Optional<House.Mould> mould(ComputedFormula formula, String name) {
    return formula.kitchen().house().flatMap(house -> house.mould(name));
  }

  /** The mould that it is filled into. */
  Optional<House.Mould> cavity() {
    return mould.flatMap(name -> mould(formula, name.value()));
  }

  /** All moulds of the house. */
  Stream<House.Mould> moulds() {
    return formula.kitchen().house().stream().flatMap(house -> house.moulds().stream());
  }

  /** How much room it takes. */
  Band<Volume> volume() {
    return density.band().map(mass::at);
  }

  /** The step by which it is cut to size; the last one counts. */
  Optional<Statement> cut() {
    return formula.formula().steps().filter(step -> step.is("cut")).reduce((one, later) -> later);
  }
}
