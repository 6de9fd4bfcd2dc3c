package dev.kettlemark.labelling;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.library.Scope;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Portion;
import dev.kettlemark.model.Product;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Remark;
import dev.kettlemark.scaling.ComputedProduct;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Follows each part of a piece down to the pantry. */
final class ProductMakeup {

  private final Entry entry;
  private final ComputedProduct computed;
  private final Scope scope;
  private final UseGatherer uses = new UseGatherer();

  ProductMakeup(Entry entry, ComputedProduct computed, Scope scope) {
    this.entry = entry;
    this.computed = computed;
    this.scope = scope;
  }

  Makeup compute() {
    Outcome<List<Portion>> portions = Outcome.known(List.of());
    for (ComputedProduct.PartWeight part : computed.parts()) {
      part.part().material().ifPresent(material -> add(material, part.ofFinished()));
      portions = Outcome.both(
          portions,
          Outcome.both(part.mass(), composition(part.part()), Portion::new),
          ProductMakeup::with);
    }
    Outcome<Composition> composition = portions.flatMap(all -> {
      List<Portion> weighing = all.stream().filter(p -> p.mass().grams() > 0).toList();
      return weighing.isEmpty()
          ? Outcome.unknown(Reason.MISSING_FIGURE, "no part of the piece weighs anything")
          : Outcome.known(Composition.mix(weighing));
    });
    return new Makeup(uses.byWeight(), composition, computed.pieceGrams().toOptional());
  }

  private void add(Located<String> material, Outcome<Ratio> share) {
    Way.Step step = new Way.Step(material.value(), entry.origin(material.span()));
    Optional<Ingredient> ingredient = declared(material.value())
        .flatMap(d -> d instanceof Ingredient i ? Optional.of(i) : Optional.empty());
    Optional<Makeup> inside =
        ingredient.isPresent() ? Optional.empty() : scope.ask(Labels.makeup(material.value()));
    if (inside.isPresent()) {
      uses.add(inside.get(), share, step);
    } else {
      uses.add(new IngredientUse(material.value(), ingredient, share, true, List.of(Way.of(step))));
    }
  }

  private Outcome<Composition> composition(Product.Part part) {
    Optional<String> name = part.material().map(Located::value);
    if (name.isEmpty()) {
      return Outcome.unknown(
          Reason.MISSING_COMPOSITION, "the %s does not say of what it is", Remark.of(part.role()));
    }
    Optional<Outcome<Composition>> formula =
        scope.ask(Formulas.computed(name.get())).map(ComputedFormula::composition);
    return formula
        .or(() -> declared(name.get())
            .flatMap(
                d -> d instanceof Ingredient i ? Optional.of(i.composition()) : Optional.empty()))
        .orElseGet(() ->
            Outcome.unknown(Reason.MISSING_COMPOSITION, "nobody has described `%s`", name.get()));
  }

  private Optional<Declaration> declared(String name) {
    return scope.ask(Lookup.of(Kind.MATERIAL, name)).flatMap(Entry::declaration);
  }

  private static List<Portion> with(List<Portion> all, Portion one) {
    List<Portion> more = new ArrayList<>(all);
    more.add(one);
    return more;
  }
}
