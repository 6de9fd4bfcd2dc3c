package dev.kettlemark.analysis;

import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * What a formula says will come out, beside what the models predict.
 *
 * @param what the word behind {@code expect}
 * @param place where the figure stands
 * @param written the figure with its range or tolerance, in base units: a share as a fraction, g/mL, °C
 * @param predicted the same figure as the models have it
 */
public record Expectation(
    Located<String> what,
    Located<Quantity> place,
    Band<Double> written,
    Outcome<Band<Double>> predicted) {

  /** The word for what is left of the charge. */
  public static final String YIELD = "yield";

  /** Pressed pieces leave gaps of up to this share of the volume; common practice, no source. */
  private static final double MOST_GAPS = 0.2;

  /** Expected error of a density without air; see {@code FoodDensity}. */
  private static final double DENSITY_ERROR = 0.01;

  /** What an {@code expect} line says; empty where it has no word or no figure that a model speaks of. */
  public static Optional<Expectation> of(ComputedFormula formula, Statement fact) {
    Optional<Located<Quantity>> figure = fact.objects().stream()
        .flatMap(operand -> operand.value() instanceof Operand.Figure found
            ? Optional.of(new Located<>(found.quantity(), operand.span())).stream()
            : Optional.<Located<Quantity>>empty().stream())
        .findFirst();
    return fact.objectNames().stream()
        .findFirst()
        .filter(word -> isModelled(word.value()))
        .flatMap(word -> figure.map(place ->
            new Expectation(word, place, band(place.value()), predicted(formula, word.value()))));
  }

  /** Whether even the nearest ends lie apart; false where nothing is predicted. */
  public boolean isOff() {
    return predicted.map(band -> !band.overlaps(written)).orElse(false);
  }

  /** Whether a word says something that a model speaks of. */
  public static boolean isModelled(String word) {
    return word.equals(YIELD) || Figure.ofWord(word).isPresent();
  }

  private static Band<Double> band(Quantity quantity) {
    double slack = quantity.toleranceInBase().map(BigFraction::doubleValue).orElse(0.0);
    return Band.spanning(
        quantity.lowInBase().doubleValue() - slack, quantity.highInBase().doubleValue() + slack);
  }

  private static Outcome<Band<Double>> predicted(ComputedFormula formula, String word) {
    if (word.equals(YIELD)) {
      return yieldOf(formula);
    }
    Figure figure = Figure.ofWord(word).orElseThrow();
    return MassFigures.of(formula).flatMap(figures -> predicted(formula, figures, figure));
  }

  private static Outcome<Band<Double>> yieldOf(ComputedFormula formula) {
    double charge = formula.process().charge().mass().grams();
    return charge > 0
        ? formula
            .process()
            .cooked()
            .map(cooked -> new Band<>(
                (cooked.mass().grams() - cooked.slack().grams()) / charge,
                (cooked.mass().grams() + cooked.slack().grams()) / charge))
        : Outcome.unknown(Reason.MISSING_FIGURE, "nothing is weighed in");
  }

  private static Outcome<Band<Double>> predicted(
      ComputedFormula formula, MassFigures figures, Figure figure) {
    return switch (figure) {
      case MOISTURE -> figures.moisture().map(band -> band.map(Ratio::fraction));
      case WATER_ACTIVITY ->
        isGrained(formula)
            ? figures.grainedWaterActivity().map(band -> band.map(Ratio::fraction))
            : figures.waterActivity().map(band -> band.map(Ratio::fraction));
      case GRAINED_WATER_ACTIVITY ->
        figures.grainedWaterActivity().map(band -> band.map(Ratio::fraction));
      case DOCTOR_SHARE -> figures.doctorShare().map(share -> Band.of(share.fraction()));
      case SUCROSE_PER_WATER -> figures.sucrosePerWater().map(band -> band.map(Ratio::fraction));
      case SUPERSATURATION -> figures.supersaturation().map(band -> band.map(Ratio::fraction));
      case DRY_GLASS_TRANSITION ->
        figures.dryGlassTransition().map(glass -> Band.of(glass.celsius()));
      case GLASS_TRANSITION ->
        figures.glassTransition().map(band -> band.map(Temperature::celsius));
      case SWEETNESS -> figures.sweetness().map(band -> band.map(Ratio::fraction));
      case DENSITY -> figures.density().map(band -> density(figures, band));
      case OVERRUN -> figures.overrun().map(band -> band.map(Ratio::fraction));
      case TEXTURE, ENERGY, VOLUME ->
        Outcome.unknown(
            Reason.NOT_MODELLED, "a figure for %s cannot be written down", figure.title());
    };
  }

  /** Without air a mass has its density, but for what the model errs by and for gaps between pieces. */
  private static Band<Double> density(MassFigures figures, Band<Density> band) {
    return figures.parcel().isAerated()
        ? band.map(Density::gramsPerMillilitre)
        : new Band<>(
            band.low().gramsPerMillilitre() * (1 - MOST_GAPS),
            band.high().gramsPerMillilitre() * (1 + DENSITY_ERROR));
  }

  private static boolean isGrained(ComputedFormula formula) {
    return formula.formula().facts().says("texture", "short");
  }
}
