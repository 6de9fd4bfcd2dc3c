package dev.kettlemark.cards;

import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.labelling.Labels;
import dev.kettlemark.labelling.Market;
import dev.kettlemark.labelling.Nutrition;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.scaling.ComputedProduct;
import dev.kettlemark.scaling.ComputedProduct.PartWeight;
import dev.kettlemark.scaling.Cost;
import dev.kettlemark.scaling.Costs;
import dev.kettlemark.scaling.Products;
import dev.kettlemark.sheets.Phrase;
import dev.kettlemark.sheets.SheetFigure;
import dev.kettlemark.sheets.SheetFigure.Basis;
import dev.kettlemark.sheets.SheetFigure.Reach;
import dev.kettlemark.sheets.SheetFigure.Spread;
import dev.kettlemark.sheets.SheetUnit;
import dev.kettlemark.sheets.Titles;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One of two products, by the piece.
 *
 * @param snapshot the state of its library
 * @param state what that state is called where it is not the present one, such as {@code HEAD~1}
 */
public record ProductSide(
    Snapshot snapshot,
    Entry entry,
    ComputedProduct computed,
    Optional<Label> label,
    Optional<String> state) {

  /** A product of a library; unknown where there is none of that name. */
  public static Outcome<ProductSide> of(Snapshot snapshot, String name, Optional<String> state) {
    Optional<Entry> entry = snapshot.library().find(Kind.PRODUCT, name);
    return entry
        .flatMap(found -> Products.computed(snapshot, found)
            .map(computed -> Outcome.known(
                new ProductSide(snapshot, found, computed, Labels.label(snapshot, found), state))))
        .orElseGet(() -> Outcome.unknown(Reason.MISSING_FIGURE, "`%s` is no product", name));
  }

  public String name() {
    return computed.product().name().value();
  }

  /** The display name, with the state of the library where that is another. */
  public String title() {
    return computed.product().shownName() + state.map(at -> " (" + at + ")").orElse("");
  }

  /** Every figure of the piece by its word, in the order in which they are told. */
  Map<String, SheetFigure> figures() {
    Map<String, SheetFigure> figures = new LinkedHashMap<>();
    exact(
        figures,
        "pieces",
        SheetUnit.NUMBER,
        pieces()
            .map(count -> Outcome.known(count))
            .orElseGet(() -> Outcome.unknown(
                Reason.MISSING_FIGURE, "`%s` does not say how many are made", name())),
        0);
    exact(figures, "piece-weight", SheetUnit.GRAM, computed.pieceGrams().map(m -> m.grams()), 1);
    exact(figures, "coat-share", SheetUnit.PERCENT, coatShare(), 1);
    cost(figures);
    label.ifPresent(known -> Nutrition.of(known, Market.EU)
        .rows()
        .forEach(row -> row.perPiece()
            .ifPresent(amount -> exact(
                figures,
                Figures.word(row),
                row.unit().equals("g") ? SheetUnit.GRAM : SheetUnit.NUMBER,
                amount,
                row.unit().equals("g") ? 1 : 0))));
    return figures;
  }

  private Optional<Double> pieces() {
    return computed.product().pieces().map(count -> count.value().doubleValue());
  }

  private Outcome<Double> coatShare() {
    Outcome<Double> sum = Outcome.known(0.0);
    for (PartWeight part : computed.parts()) {
      if (part.part().role().equals("coat")) {
        sum = Outcome.both(sum, part.ofFinished().map(Ratio::percent), Double::sum);
      }
    }
    return sum;
  }

  /** Nothing where the house has no prices; what lacks a price is a bound from below. */
  private void cost(Map<String, SheetFigure> figures) {
    Costs costs = new Costs(snapshot, label.flatMap(Label::house));
    Optional<Double> count = pieces().filter(pieces -> pieces > 0);
    if (costs.currency().isEmpty() || count.isEmpty()) {
      return;
    }
    Cost each = costs.ofPieces(computed).times(1 / count.get());
    Outcome<Reach> reach = each.isComplete()
        ? Outcome.known(new Reach(each.low(), (each.low() + each.high()) / 2, each.high()))
        : Outcome.unknown(
            Reason.MISSING_FIGURE,
            "a price is missing; without it %s",
            Display.trimmed((each.low() + each.high()) / 2, 3));
    figures.put(
        "cost-piece",
        new SheetFigure(
            name() + ".cost-piece",
            SheetUnit.PRICE,
            reach,
            each.low() < each.high() ? Spread.RANGE : Spread.NONE,
            3,
            Basis.EXACT));
  }

  /** A part of the piece: what it is, what it is made of, and its figures by their words. */
  record PartFigures(String role, String material, Map<String, SheetFigure> figures) {}

  /** The parts in order; several of one role are told apart by a number. */
  List<PartFigures> parts() {
    return computed.parts().stream().map(this::part).toList();
  }

  private PartFigures part(PartWeight part) {
    Map<String, SheetFigure> figures = new LinkedHashMap<>();
    Optional<String> material = part.part().material().map(Located::value);
    exact(figures, "part-weight", SheetUnit.GRAM, part.mass().map(m -> m.grams()), 1);
    exact(figures, "part-share", SheetUnit.PERCENT, part.ofFinished().map(Ratio::percent), 1);
    material.ifPresent(name -> eating(name, figures));
    return new PartFigures(part.part().role(), material.map(this::titleOf).orElse("–"), figures);
  }

  /** How wet a part is, and how it draws water from the part beside it. */
  private void eating(String material, Map<String, SheetFigure> figures) {
    Outcome<MassFigures> made = Formulas.computed(material)
        .ask(snapshot)
        .map(MassFigures::of)
        .orElseGet(() -> Outcome.unknown(
            Reason.NOT_MODELLED, "`%s` is bought, and nobody states its water activity", material));
    Optional<Ingredient> bought = ingredient(material);
    figures.put(
        "moisture",
        bought
            .map(ingredient -> figure(
                "moisture",
                SheetUnit.PERCENT,
                ingredient.composition().map(all -> Reach.of(all.water().percent())),
                Spread.NONE,
                1))
            .orElseGet(() -> SheetFigure.model(
                name() + ".moisture",
                SheetUnit.PERCENT,
                made.flatMap(MassFigures::moisture)
                    .map(band -> SheetFigure.reach(band, Ratio::percent)),
                1)));
    figures.put(
        "water-activity",
        SheetFigure.activity(name() + ".water-activity", made.flatMap(MassFigures::waterActivity)));
  }

  private Optional<Ingredient> ingredient(String material) {
    return snapshot
        .library()
        .find(Kind.MATERIAL, material)
        .flatMap(Entry::declaration)
        .flatMap(d -> d instanceof Ingredient i ? Optional.of(i) : Optional.empty());
  }

  /** The display name of a material. */
  String titleOf(String material) {
    return snapshot
        .library()
        .find(Kind.MATERIAL, material)
        .flatMap(Entry::declaration)
        .map(declaration -> declaration.shownName())
        .orElse(material);
  }

  /** Whose allergens nobody has stated. */
  List<Phrase> silent() {
    Titles titles = Titles.of(snapshot, label.flatMap(Label::house));
    return label.stream()
        .flatMap(one -> one.allergens().silent().stream())
        .map(use -> (Phrase) new Phrase.Titled(titles.of(use.name()), false))
        .toList();
  }

  private void exact(
      Map<String, SheetFigure> figures,
      String word,
      SheetUnit unit,
      Outcome<Double> value,
      int decimals) {
    figures.put(word, figure(word, unit, value.map(Reach::of), Spread.NONE, decimals));
  }

  private SheetFigure figure(
      String word, SheetUnit unit, Outcome<Reach> reach, Spread spread, int decimals) {
    return new SheetFigure(name() + "." + word, unit, reach, spread, decimals, Basis.EXACT);
  }
}
