package dev.kettlemark.sheets;

import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Located;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.sheets.Shown.Made;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** How large the pans and bowls of a home cook must be for the batch of the sheet. */
final class HomeVessels {

  /** Sizes that pans and mixer bowls are sold in, in litres; common practice, no source. */
  private static final double[] SIZES = {1, 1.5, 2, 3, 4, 5, 6, 7, 10, 15, 20};

  /** A boiling syrup may rise to three times its own height; common practice, no source. */
  private static final double PAN_FILLED = 1.0 / 3;

  /** A whisk throws out what stands higher; common practice, no source. */
  private static final double BOWL_FILLED = 0.8;

  private HomeVessels() {}

  /** The size that does for all stages in a vessel; empty where their volume is not known. */
  static Optional<Phrase> size(Shown shown, House.Vessel vessel) {
    boolean isPan = vessel.kind().equals("pan");
    DoubleStream volumes = shown.made().stream()
        .flatMap(made -> made.process().stages().stream()
            .filter(stage -> isIn(stage, vessel))
            .map(stage -> isPan ? boiling(stage) : whipped(made, stage)))
        .mapToDouble(litres -> litres.orElse(Double.NaN));
    double most = volumes.reduce(0, Math::max) / (isPan ? PAN_FILLED : BOWL_FILLED);
    return DoubleStream.of(SIZES)
        .filter(size -> size >= most && most > 0)
        .boxed()
        .findFirst()
        .map(size -> Phrase.words(
            isPan ? "tool.pan.home" : "tool.bowl.home",
            Phrase.value(new SheetFigure(
                "equipment." + vessel.name().value() + ".home",
                SheetUnit.MILLILITRE,
                Outcome.known(SheetFigure.Reach.of(1000 * size)),
                SheetFigure.Spread.NONE,
                0,
                SheetFigure.Basis.PRACTICE))));
  }

  private static boolean isIn(StageResult stage, House.Vessel vessel) {
    return stage
        .stage()
        .vessel()
        .map(Located::value)
        .filter(vessel.name().value()::equals)
        .isPresent();
  }

  /** No syrup is lighter than water, so its litres are no more than its kilograms. */
  private static Outcome<Double> boiling(StageResult stage) {
    return stage.left().mass().map(mass -> mass.plus(stage.evaporated()).grams() / 1000);
  }

  private static Outcome<Double> whipped(Made made, StageResult stage) {
    Outcome<Density> lightest =
        MassFigures.of(stage.left(), made.formula().kitchen()).density().map(band -> band.low());
    return Outcome.both(
        stage.left().mass(),
        lightest,
        (Mass mass, Density density) -> mass.grams() / density.gramsPerMillilitre() / 1000);
  }
}
