package dev.kettlemark.sheets;

import dev.kettlemark.analysis.Material;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.scaling.WeighingLine;
import dev.kettlemark.sheets.Shown.Made;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the materials cost, only where the house has a price for each of them. */
final class CostPart implements SheetPart {

  /** Tap water is not bought by weight. */
  private static final double WATER = 0.998;

  @Override
  public Part.Kind kind() {
    return Part.Kind.COST;
  }

  @Override
  public List<Block> of(Shown shown) {
    if (!shown.isFor(SheetReader.CHEF, SheetReader.PRODUCTION)
        || shown.product().isPresent()) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>();
    for (Made made : shown.made()) {
      total(made).ifPresent(total -> {
        List<Block.Term> terms = new ArrayList<>();
        terms.add(new Block.Term(Phrase.words("cost.batch"), price(made.name() + ".cost", total)));
        shown
            .pieces()
            .filter(pieces -> pieces.count().doubleValue() > 0)
            .ifPresent(pieces -> terms.add(new Block.Term(
                Phrase.words("cost.piece"),
                price(made.name() + ".cost.piece", total / pieces.count().doubleValue()))));
        blocks.add(new Block.Terms(terms));
      });
    }
    return blocks;
  }

  private static Phrase price(String id, double price) {
    return Phrase.value(SheetFigure.exact(id, SheetUnit.PRICE, price, price < 1 ? 3 : 2));
  }

  private static Optional<Double> total(Made made) {
    double total = 0;
    for (WeighingLine line : made.scaling().weighing().lines()) {
      Optional<Ingredient> ingredient =
          made.formula().material(line.ingredient()).flatMap(Material::ingredient);
      boolean isWater = ingredient
          .filter(one ->
              one.composition().map(c -> c.fraction(Component.WATER) >= WATER).orElse(false))
          .isPresent();
      if (isWater) {
        continue;
      }
      Optional<Double> perGram = ingredient.flatMap(CostPart::pricePerGram);
      if (perGram.isEmpty()) {
        return Optional.empty();
      }
      total += perGram.get() * line.grams().doubleValue();
    }
    return Optional.of(total);
  }

  /** {@code price 1.10 per kg}. */
  private static Optional<Double> pricePerGram(Ingredient ingredient) {
    Optional<Statement> line = ingredient.facts().first("price");
    Optional<Double> figure = line.stream()
        .flatMap(price -> price.objects().stream())
        .map(Located::value)
        .flatMap(o -> o instanceof Operand.Figure f ? Stream.of(f) : Stream.empty())
        .map(f -> f.quantity().middle().doubleValue())
        .findFirst();
    Optional<Double> grams = line.stream()
        .flatMap(price -> price.objects().stream())
        .map(Located::value)
        .flatMap(o -> o instanceof Operand.Rate rate ? Stream.of(rate.unit()) : Stream.empty())
        .filter(unit -> unit.measures(Unit.Dimension.MASS))
        .map(unit -> unit.factor().doubleValue())
        .findFirst();
    return figure.flatMap(f -> grams.map(g -> f / g));
  }
}
