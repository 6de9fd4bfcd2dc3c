package dev.kettlemark.sheets;

import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.scaling.ComputedProduct;
import dev.kettlemark.scaling.Scaling;
import dev.kettlemark.sheets.Shown.Made;
import java.util.ArrayList;
import java.util.List;

/** What comes out: pieces, what is weighed in, and what is left of it. */
final class YieldPart implements SheetPart {

  @Override
  public Part.Kind kind() {
    return Part.Kind.YIELD;
  }

  @Override
  public List<Block> of(Shown shown) {
    List<Block.Term> terms = new ArrayList<>();
    shown.pieces().ifPresent(pieces -> pieces(pieces, terms));
    shown.product().ifPresent(product -> parts(product, terms));
    shown.made().forEach(made -> made(shown, made, terms));
    shown.product().ifPresent(product -> bought(shown, product, terms));
    return List.of(new Block.Terms(terms));
  }

  private static void pieces(Shown.Pieces pieces, List<Block.Term> terms) {
    Phrase count = Phrase.value(
        SheetFigure.exact("yield.pieces", SheetUnit.PIECE, pieces.count().doubleValue(), 0));
    Phrase each = Phrase.value(new SheetFigure(
        "yield.piece",
        SheetUnit.GRAM,
        pieces.each().map(mass -> SheetFigure.Reach.of(mass.grams())),
        SheetFigure.Spread.NONE,
        1,
        SheetFigure.Basis.EXACT));
    terms.add(term("yield.pieces", Phrase.words("yield.pieces.of", count, each)));
  }

  /** What one piece is made of. */
  private static void parts(ComputedProduct product, List<Block.Term> terms) {
    for (ComputedProduct.PartWeight part : product.parts()) {
      String role = part.part().role();
      Phrase mass = Phrase.value(new SheetFigure(
          "piece." + role,
          SheetUnit.GRAM,
          part.mass().map(m -> SheetFigure.Reach.of(m.grams())),
          SheetFigure.Spread.NONE,
          1,
          SheetFigure.Basis.EXACT));
      terms.add(new Block.Term(Phrase.words("role." + role + ".alone"), mass));
    }
  }

  private static void made(Shown shown, Made made, List<Block.Term> terms) {
    Scaling scaling = made.scaling();
    String name = made.name();
    Phrase of = shown.made().size() > 1 ? shown.named(made.name()) : Phrase.nothing();
    terms.add(term("yield.charge", Phrase.value(charge(made)), of));
    if (shown.reader() != SheetReader.HOME) {
      terms.add(term("yield.cooked", Phrase.value(cooked(made)), of));
      terms.add(term("yield.share", Phrase.value(share(made)), of));
      Mass evaporated = made.process().evaporated();
      if (evaporated.grams() > 0) {
        terms.add(term(
            "yield.evaporated",
            Phrase.value(SheetFigure.estimate(
                name + ".evaporated",
                Outcome.known(evaporated),
                scaling.cooked().slack())),
            of));
      }
    }
    Mass lost = scaling.cooked().mass().minus(scaling.finished().mass());
    if (lost.grams() > 1e-9) {
      terms.add(term(
          "yield.loss",
          Phrase.value(SheetFigure.written(
              name + ".loss",
              SheetUnit.PERCENT,
              lost.dividedBy(scaling.cooked().mass()).percent(),
              1)),
          of));
    }
    if (lost.grams() > 1e-9 || shown.reader() == SheetReader.HOME) {
      terms.add(term(
          "yield.finished",
          Phrase.value(SheetFigure.estimate(
              name + ".finished",
              Outcome.known(scaling.finished().mass()),
              scaling.cooked().slack())),
          of));
    }
  }

  static SheetFigure charge(Made made) {
    double grams = made.scaling().weighing().total().doubleValue();
    return SheetFigure.exact(made.name() + ".charge", SheetUnit.GRAM, grams, grams < 1000 ? 1 : 0);
  }

  private static SheetFigure cooked(Made made) {
    return SheetFigure.estimate(
        made.name() + ".cooked",
        Outcome.known(made.scaling().cooked().mass()),
        made.scaling().cooked().slack());
  }

  private static SheetFigure share(Made made) {
    Mass charge = made.process().charge().mass();
    Ratio off = made.scaling().cooked().slack().dividedBy(charge);
    Outcome<Band<Ratio>> band =
        made.process().yieldShare().map(share -> new Band<>(share.minus(off), share.plus(off)));
    return SheetFigure.share(made.name() + ".yield", band, 1);
  }

  /** What is not made but taken ready, such as a couverture. */
  private static void bought(Shown shown, ComputedProduct product, List<Block.Term> terms) {
    for (ComputedProduct.Need need : product.needs()) {
      boolean isMade = shown.made().stream().anyMatch(made -> made.name().equals(need.material()));
      if (!isMade) {
        Phrase on = Phrase.value(weight("need." + need.material() + ".on-pieces", need.onPieces()));
        Phrase all = Phrase.value(weight("need." + need.material(), need.withLoss()));
        Phrase spare = need.withLoss().grams() > need.onPieces().grams() + 1e-9
            ? Phrase.words("yield.spare", on)
            : Phrase.nothing();
        terms.add(new Block.Term(
            new Phrase.Titled(shown.titles().of(need.material()), false),
            Phrase.together(all, spare)));
      }
    }
  }

  private static SheetFigure weight(String id, Mass mass) {
    return SheetFigure.exact(id, SheetUnit.GRAM, mass.grams(), 0);
  }

  private static Block.Term term(String key, Phrase told) {
    return new Block.Term(Phrase.words(key), told);
  }

  private static Block.Term term(String key, Phrase told, Phrase of) {
    return new Block.Term(
        of.isNothing() ? Phrase.words(key) : Phrase.words("yield.of", Phrase.words(key), of), told);
  }
}
