package dev.kettlemark.sheets;

import dev.kettlemark.analysis.Material;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.scaling.WeighingLine;
import dev.kettlemark.scaling.WeighingList;
import dev.kettlemark.sheets.Shown.Made;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/** What a home cook needs where a kitchen scale is too coarse for a small dose. */
final class FineScale {

  /** Most kitchen scales show whole grams; common practice, no source. */
  private static final House.Scale KITCHEN = new House.Scale(
      new Located<>("kitchen-scale", new Span(0, 0)), new BigFraction(1), new BigFraction(5000));

  private static final double FINE = 0.01;

  private FineScale() {}

  /** A note for the doses that need a fine scale, and a premix for each where one can be made. */
  static Optional<List<Phrase>> of(Made made) {
    List<Phrase> names = new ArrayList<>();
    List<Phrase> notes = new ArrayList<>();
    BigFraction batch = made.scaling().batch();
    List<WeighingLine> coarse =
        WeighingList.of(made.formula(), batch, List.of(KITCHEN)).lines();
    for (WeighingLine line : coarse) {
      Optional<Ingredient> ingredient =
          made.formula().material(line.ingredient()).flatMap(Material::ingredient);
      boolean isTooCoarse = line.grams().signum() > 0
          && ingredient
              .filter(one -> WeighingList.stepShare(KITCHEN, line.grams())
                  > WeighingList.allowedError(made.formula().kitchen(), one))
              .isPresent()
          && ingredient.filter(WeighingList::isCritical).isPresent();
      if (isTooCoarse) {
        names.add(Names.material(line.ingredient(), made));
        String id = made.name() + "." + line.stage() + "." + line.ingredient();
        line.premix()
            .ifPresent(premix -> notes.add(
                FormulaPart.premix(id, Names.material(line.ingredient(), made), premix, made)));
      }
    }
    if (names.isEmpty()) {
      return Optional.empty();
    }
    notes.add(
        0,
        Phrase.sentence(
            "formula.fine-scale",
            new Phrase.Listing(names),
            Phrase.value(new SheetFigure(
                made.name() + ".fine-scale",
                SheetUnit.GRAM,
                Outcome.known(SheetFigure.Reach.of(FINE)),
                SheetFigure.Spread.NONE,
                2,
                SheetFigure.Basis.PRACTICE))));
    return Optional.of(notes);
  }
}
