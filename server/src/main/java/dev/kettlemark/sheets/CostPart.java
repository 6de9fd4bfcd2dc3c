package dev.kettlemark.sheets;

import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.scaling.Cost;
import dev.kettlemark.scaling.Costs;
import dev.kettlemark.sheets.Shown.Made;
import java.util.ArrayList;
import java.util.List;

/** What the materials cost, by the prices of the house and of its pantry. */
final class CostPart implements SheetPart {

  @Override
  public Part.Kind kind() {
    return Part.Kind.COST;
  }

  /** A chef asks for it; at home and at the bench it is no matter. */
  @Override
  public List<Block> of(Shown shown) {
    boolean isWanted = shown.reader() == SheetReader.PRODUCTION
        || (shown.reader() == SheetReader.CHEF && shown.request().shows().contains("costs"));
    Costs costs = new Costs(shown.snapshot(), shown.house());
    Cost all = all(shown, costs);
    if (!isWanted || (all.high() == 0 && costs.currency().isEmpty())) {
      return List.of();
    }
    Teller teller = new Teller(shown, costs);
    shown.made().forEach(made -> teller.batch(made, costs.ofBatch(made.scaling())));
    shown
        .product()
        .ifPresent(product -> product.needs().stream()
            .filter(need -> shown.made().stream().noneMatch(m -> m.name().equals(need.material())))
            .forEach(need ->
                teller.bought(need.material(), costs.of(need.material(), need.onPieces()))));
    shown.pieces().filter(pieces -> pieces.count().doubleValue() > 0).ifPresent(pieces -> {
      double count = pieces.count().doubleValue();
      if (shown.product().isPresent()) {
        teller.tell("cost.all", Phrase.nothing(), "cost.pieces", all);
      }
      teller.tell("cost.piece", Phrase.nothing(), "cost.piece", all.times(1 / count));
    });
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Terms(teller.terms));
    blocks.add(Block.Lines.of(Phrase.sentence("cost.only")));
    return blocks;
  }

  private static Cost all(Shown shown, Costs costs) {
    return shown
        .product()
        .map(costs::ofPieces)
        .orElseGet(() -> shown.made().stream()
            .map(made -> costs.ofBatch(made.scaling()))
            .reduce(Cost.NOTHING, Cost::plus));
  }

  /** Tells costs in the currency of the house. */
  private static final class Teller {

    private final Shown shown;
    private final Phrase currency;
    private final List<Block.Term> terms = new ArrayList<>();

    Teller(Shown shown, Costs costs) {
      this.shown = shown;
      this.currency =
          costs.currency().map(Phrase::given).orElseGet(() -> Phrase.words("cost.currency"));
    }

    void batch(Made made, Cost cost) {
      Phrase of =
          shown.made().size() > 1 || shown.product().isPresent() ? made.title() : Phrase.nothing();
      tell("cost.batch", of, made.name() + ".cost", cost);
      Mass finished = made.scaling().finished().mass();
      if (finished.grams() > 0) {
        tell(
            "cost.kilogram",
            of,
            made.name() + ".cost.kilogram",
            cost.times(1000 / finished.grams()));
      }
    }

    void bought(String material, Cost cost) {
      tell(
          "cost.bought",
          new Phrase.Titled(shown.titles().of(material), false),
          "need." + material + ".cost",
          cost);
    }

    void tell(String key, Phrase of, String id, Cost cost) {
      Phrase word =
          of.isNothing() ? Phrase.words(key) : Phrase.words("yield.of", Phrase.words(key), of);
      terms.add(new Block.Term(word, told(id, cost)));
    }

    /** Where a price is missing, what is known is a bound from below. */
    private Phrase told(String id, Cost cost) {
      if (cost.isComplete()) {
        return Phrase.words("cost.money", Phrase.value(figure(id, cost)), currency);
      }
      Phrase missing = new Phrase.Listing(cost.missing().stream()
          .<Phrase>map(name -> new Phrase.Titled(shown.titles().of(name), true))
          .toList());
      return cost.high() == 0
          ? Phrase.words("cost.unknown", missing)
          : Phrase.words(
              "cost.least", Phrase.value(figure(id + ".least", cost)), currency, missing);
    }

    private static SheetFigure figure(String id, Cost cost) {
      SheetFigure.Reach reach =
          new SheetFigure.Reach(cost.low(), (cost.low() + cost.high()) / 2, cost.high());
      return new SheetFigure(
          id,
          SheetUnit.PRICE,
          Outcome.known(reach),
          cost.low() < cost.high() ? SheetFigure.Spread.RANGE : SheetFigure.Spread.NONE,
          cost.high() < 1 ? 3 : 2,
          SheetFigure.Basis.EXACT);
    }
  }
}
