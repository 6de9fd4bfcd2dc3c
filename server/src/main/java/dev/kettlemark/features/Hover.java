package dev.kettlemark.features;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Snapshot;
import java.util.List;
import java.util.Optional;

/** What is known of the thing under a pointer: the first answer of a chain, the most specific first. */
public final class Hover {

  private static final List<HoverAnswer> ANSWERS = List.of(
      new AcceptHover(),
      new ThresholdHover(),
      new TrialHover(),
      new TemperatureHover(),
      new AmountHover(),
      new UnitHover(),
      new StageHover(),
      new FormulaHover(),
      new IngredientHover(),
      new ProductHover(),
      new BasisHover(),
      new KitchenHover(),
      new SheetHover(),
      new FigureHover(),
      new FactHover(),
      new WordHover());

  private Hover() {}

  /**
   * The answer for an offset.
   *
   * @param offset absolute; touching a word at either end counts
   */
  public static Optional<HoverText> at(Snapshot snapshot, Document document, int offset) {
    Pointed pointed = Pointed.at(snapshot, document, offset);
    return ANSWERS.stream().flatMap(answer -> answer.to(pointed).stream()).findFirst();
  }
}
