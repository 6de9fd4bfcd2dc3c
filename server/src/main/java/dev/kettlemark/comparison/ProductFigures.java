package dev.kettlemark.comparison;

import dev.kettlemark.comparison.FigureChange.Figure;
import dev.kettlemark.comparison.FigureChange.Group;
import dev.kettlemark.labelling.Makeup;
import dev.kettlemark.model.Located;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.scaling.ComputedProduct;
import dev.kettlemark.science.FoodEnergy;
import dev.kettlemark.science.Sweetness;
import java.util.LinkedHashMap;
import java.util.Map;

/** What can be told of a product: what a piece weighs, what all pieces need, and what they are made of. */
final class ProductFigures {

  private ProductFigures() {}

  static Map<Figure, Shown> of(ComputedProduct product) {
    Map<Figure, Shown> figures = new LinkedHashMap<>();
    figures.put(amount("piece"), Shown.of(product.pieceGrams(), ProductFigures::mass));
    product
        .product()
        .pieces()
        .map(count -> count.value().doubleValue())
        .ifPresent(count -> figures.put(
            amount("pieces"), Shown.number(Display.trimmed(count, 2), "pieces", count)));
    for (ComputedProduct.PartWeight part : product.parts()) {
      String name =
          part.part().role() + ": " + part.part().material().map(Located::value).orElse("unnamed");
      figures.put(amount(name), Shown.of(part.mass(), ProductFigures::mass));
    }
    for (ComputedProduct.Need need : product.needs()) {
      figures.put(amount("needs " + need.material()), mass(need.withLoss()));
      need.scaling()
          .ifKnown(scaling -> figures.put(
              amount("charge of " + need.material()), mass(scaling.charge().mass())));
    }
    return figures;
  }

  /** What the piece is made of, all its parts together. */
  static Map<Figure, Shown> of(Makeup makeup) {
    Map<Figure, Shown> figures = new LinkedHashMap<>();
    figures.put(
        mass("moisture"),
        Shown.of(
            makeup.composition(),
            c -> Shown.number(Display.estimate(c.water()), "percent", c.water().percent())));
    figures.put(
        mass("sweetness"),
        Shown.of(
            makeup.composition().map(Sweetness::bandOf),
            band -> FormulaFigures.band(
                Display.number(band, 2), "ofSucrose", band, ratio -> ratio.fraction())));
    figures.put(
        mass("energy"),
        Shown.of(
            makeup.composition().map(FoodEnergy::europeanKilocalories),
            kcal -> Shown.number(
                Display.fixed(kcal, 0) + " kcal/100 g", "kilocaloriesPer100Grams", kcal)));
    return figures;
  }

  private static Shown mass(Mass mass) {
    return Shown.number(Display.mass(mass), "grams", mass.grams());
  }

  private static Figure amount(String name) {
    return new Figure(Group.AMOUNT, name);
  }

  private static Figure mass(String name) {
    return new Figure(Group.MASS, name);
  }
}
