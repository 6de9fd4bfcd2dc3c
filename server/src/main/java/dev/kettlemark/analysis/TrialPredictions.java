package dev.kettlemark.analysis;

import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.TakeLine;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.fraction.BigFraction;

/** What the model expects of each measurement of one batch. */
final class TrialPredictions {

  /** Instruments usually measure a water activity at this temperature; common practice, no source. */
  private static final Temperature ACTIVITY_AT = Temperature.ofCelsius(25);

  /** Expected error of a density without air, for other sugars than sucrose; see its equation. */
  private static final double DENSITY_ERROR = 0.01;

  private final ComputedFormula formula;
  private final ProcessResult process;
  private final boolean hasWeights;

  /**
   * Prepares the predictions of a batch.
   *
   * @param hasWeights whether the process has the batch's own weights, not those of a nominal charge
   */
  TrialPredictions(ComputedFormula formula, ProcessResult process, boolean hasWeights) {
    this.formula = formula;
    this.process = process;
    this.hasWeights = hasWeights;
  }

  TrialReading reading(Measurement measurement) {
    return new TrialReading(measurement, predicted(measurement), wanted(measurement));
  }

  private Outcome<Prediction> predicted(Measurement measured) {
    boolean needsWeights = switch (measured.quantity()) {
      case WEIGHT, FINISHED, PIECES -> true;
      default -> false;
    };
    return needsWeights && !hasWeights
        ? Outcome.unknown(Reason.MISSING_FIGURE, "neither trial nor formula gives a batch")
        : modelled(measured);
  }

  private Outcome<Prediction> modelled(Measurement measured) {
    return switch (measured.quantity()) {
      case END -> of(measured, stage -> Outcome.known(ofCelsius(end(stage))));
      case TEMPERATURE -> of(measured, stage -> temperature(stage, measured.step()));
      case WEIGHT -> of(measured, TrialPredictions::weight);
      case WATER -> of(measured, stage -> water(stage, false));
      case SOLIDS -> of(measured, stage -> water(stage, true));
      case ACTIVITY -> of(measured, stage -> activity(stage, measured.at()));
      case DENSITY -> of(measured, stage -> density(stage, measured.at()));
      case OVERRUN -> of(measured, this::overrun);
      case FINISHED -> finished();
      case PIECES -> pieces(measured);
      case OTHER ->
        Outcome.unknown(Reason.NOT_MODELLED, "no model speaks of this, or the stage is not there");
    };
  }

  /** The stage a measurement speaks of, or else the last one. */
  private Optional<StageResult> stage(Measurement measured) {
    return measured.stage().isPresent() ? process.stage(measured.stage().get()) : process.last();
  }

  private Outcome<Prediction> of(
      Measurement measured, Function<StageResult, Outcome<Prediction>> predicted) {
    return stage(measured)
        .map(predicted)
        .orElseGet(() -> Outcome.unknown(Reason.MISSING_FIGURE, "the formula has no stage"));
  }

  private static Band<Temperature> end(StageResult stage) {
    return CookedStage.lastCook(stage)
        .flatMap(cook -> Boiling.target(cook.step()))
        .orElse(stage.left().temperature());
  }

  /** Right after the step that is named, or where parcels last met with different heat. */
  private static Outcome<Prediction> temperature(StageResult stage, List<String> named) {
    Optional<StepResult> step = TrialSteps.named(stage, named);
    if (step.isPresent()) {
      return step.get()
          .merged()
          .or(() ->
              step.get().after().stream().map(StageParcel::temperature).reduce(Band::spanning))
          .map(band -> Outcome.known(ofCelsius(band)))
          .orElseGet(() -> Outcome.unknown(Reason.NOT_MODELLED, "the step changes no heat"));
    }
    boolean isAnyMix = named.size() <= 1;
    return isAnyMix
        ? Outcome.known(ofCelsius(TrialSteps.lastMeeting(stage)
            .flatMap(StepResult::merged)
            .orElse(stage.left().temperature())))
        : Outcome.unknown(
            Reason.MISSING_FIGURE,
            "stage `%s` has no step `%s`",
            stage.name(),
            String.join(" ", named));
  }

  private static Outcome<Prediction> weight(StageResult stage) {
    return stage
        .left()
        .mass()
        .map(mass -> Prediction.within(mass.grams(), stage.left().slack().grams()));
  }

  private Outcome<Prediction> water(StageResult stage, boolean solids) {
    Function<Ratio, Double> shown =
        water -> solids ? water.complement().percent() : water.percent();
    return Outcome.both(
        stage.left().composition(),
        figures(stage).moisture(),
        (composition, band) -> new Prediction(shown.apply(composition.water()), band.map(shown)));
  }

  private Outcome<Prediction> activity(StageResult stage, Optional<Temperature> at) {
    return figures(stage)
        .waterActivity(at.orElse(ACTIVITY_AT))
        .map(band -> Prediction.of(band.map(Ratio::fraction)));
  }

  private Outcome<Prediction> density(StageResult stage, Optional<Temperature> at) {
    return stage.left().isAerated()
        ? figures(stage).density().map(band -> Prediction.of(band.map(Density::gramsPerMillilitre)))
        : AirReading.withoutAir(stage, at)
            .map(density -> Prediction.within(
                density.gramsPerMillilitre(), density.gramsPerMillilitre() * DENSITY_ERROR));
  }

  private Outcome<Prediction> overrun(StageResult stage) {
    return figures(stage).overrun().map(band -> Prediction.of(band.map(Ratio::percent)));
  }

  private MassFigures figures(StageResult stage) {
    return MassFigures.of(stage.left(), formula.kitchen());
  }

  private Outcome<Prediction> finished() {
    return PieceOrder.of(formula.formula().facts())
        .map(order -> afterLoss(order.loss()))
        .orElseGet(() -> process
            .cooked()
            .flatMap(cooked -> Outcome.unknown(
                Reason.MISSING_FIGURE,
                "the formula states no handling loss; %.0f g are cooked",
                cooked.mass().grams())));
  }

  private Outcome<Prediction> pieces(Measurement measured) {
    Optional<PieceOrder> order = PieceOrder.of(formula.formula().facts());
    Optional<Double> each =
        measured.each().or(() -> order.map(o -> o.gramsEach().doubleValue())).filter(g -> g > 0);
    return each.map(grams -> afterLoss(order.map(PieceOrder::loss).orElse(BigFraction.ZERO))
            .map(whole -> new Prediction(
                Math.floor(whole.best() / grams),
                whole.band().map(end -> Math.floor(end / grams)))))
        .orElseGet(() -> Outcome.unknown(
            Reason.MISSING_FIGURE, "neither trial nor formula says what a piece weighs"));
  }

  private Outcome<Prediction> afterLoss(BigFraction loss) {
    double kept = 1 - loss.doubleValue();
    return process
        .cooked()
        .map(cooked ->
            Prediction.within(cooked.mass().grams() * kept, cooked.slack().grams() * kept));
  }

  private Optional<Band<Double>> wanted(Measurement measured) {
    if (measured.quantity() == TrialQuantity.END) {
      return stage(measured)
          .filter(stage -> CookedStage.lastCook(stage).isPresent())
          .map(stage -> ofCelsius(end(stage)).band())
          .filter(band -> !band.isExact());
    }
    return switch (measured.quantity()) {
      case DENSITY -> expected(measured, "density", Unit.Dimension.DENSITY);
      case ACTIVITY ->
        expected(measured, "water-activity", Unit.Dimension.ACTIVITY)
            .or(() -> expectedPlain(measured, "water-activity"));
      default -> Optional.empty();
    };
  }

  private Optional<Band<Double>> expected(
      Measurement measured, String what, Unit.Dimension dimension) {
    return expectation(measured, what)
        .flatMap(fact -> fact.figure(dimension))
        .map(Located::value)
        .map(TrialPredictions::band);
  }

  /** {@code expect water-activity 0.44-0.60}, whose figure bears no unit. */
  private Optional<Band<Double>> expectedPlain(Measurement measured, String what) {
    return expectation(measured, what).flatMap(FormulaVersion::range).map(TrialPredictions::band);
  }

  private Optional<Statement> expectation(Measurement measured, String what) {
    return measured
        .stage()
        .filter(this::isWhole)
        .flatMap(stage -> formula
            .formula()
            .facts()
            .all("expect")
            .filter(fact ->
                fact.objectNames().stream().anyMatch(name -> name.value().equals(what)))
            .findFirst());
  }

  /** Whether a stage's mass is the whole formula's: nothing is weighed in behind it. */
  private boolean isWhole(String name) {
    Optional<StageResult> at = process.last();
    for (int i = 0; i < process.stages().size() && at.isPresent(); i++) {
      StageResult stage = at.get();
      if (stage.name().equals(name)) {
        return true;
      }
      List<TakeLine> takes = stage.stage().takes();
      if (!stage.stage().amounts().isEmpty() || takes.size() != 1) {
        return false;
      }
      at = process.stage(takes.get(0).stage().value());
    }
    return false;
  }

  private static Band<Double> band(Quantity quantity) {
    double slack = quantity.toleranceInBase().map(BigFraction::doubleValue).orElse(0.0);
    return Band.spanning(
        quantity.lowInBase().doubleValue() - slack, quantity.highInBase().doubleValue() + slack);
  }

  private static Prediction ofCelsius(Band<Temperature> band) {
    return Prediction.of(band.map(Temperature::celsius));
  }
}
