package dev.kettlemark.checks;

import dev.kettlemark.analysis.Boiling;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Derived;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Portion;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.text.Lazy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A step that boils water off up to a temperature; each stands for itself. */
final class CookStep {

  private static final Derived<List<CookStep>> ALL = Derived.by(CookStep::each);

  private final Stage stage;
  private final StepResult result;
  private final Located<Quantity> target;
  private final Band<Temperature> band;
  private final Lazy<Optional<Portion>> charge = Lazy.of(this::inThePan);

  private CookStep(Stage stage, StepResult result, Located<Quantity> target) {
    this.stage = stage;
    this.result = result;
    this.target = target;
    this.band = Boiling.band(target.value());
  }

  /** Every step of a formula that cooks or boils to a written temperature. */
  static Stream<CookStep> of(ComputedFormula formula) {
    return ALL.of(formula).stream();
  }

  private static List<CookStep> each(ComputedFormula formula) {
    List<CookStep> cooks = new ArrayList<>();
    for (StageResult stage : formula.process().stages()) {
      for (StepResult step : stage.steps()) {
        target(step.step())
            .ifPresent(target -> cooks.add(new CookStep(stage.stage(), step, target)));
      }
    }
    return List.copyOf(cooks);
  }

  /** Where it stands. */
  Stage stage() {
    return stage;
  }

  /** What it did. */
  StepResult result() {
    return result;
  }

  /** The temperature as written. */
  Located<Quantity> target() {
    return target;
  }

  /** The temperature with its range or tolerance. */
  Band<Temperature> band() {
    return band;
  }

  Statement step() {
    return result.step();
  }

  /** The middle of the temperature as written. */
  Temperature middle() {
    return Temperature.ofCelsius(target.value().middleInBase().doubleValue());
  }

  /** Writes another temperature, in whole degrees of the scale that was written. */
  Fix cookTo(Temperature other) {
    boolean isFahrenheit =
        target.value().unit().filter(unit -> unit == Unit.FAHRENHEIT).isPresent();
    String figure =
        isFahrenheit ? Display.fahrenheit(other) : Display.fixed(other.celsius(), 0) + " °C";
    return Fix.replace("Cook to " + figure, target.span(), figure);
  }

  /** The same fix, where the temperature is written in this section. */
  List<Fix> cookToHere(Subject subject, Temperature other) {
    return subject.isWrittenHere(target.span()) ? List.of(cookTo(other)) : List.of();
  }

  /** What lay in the pan before; empty where some of it is unknown or there is nothing. */
  Optional<Portion> charge() {
    return charge.get();
  }

  private Optional<Portion> inThePan() {
    List<Portion> portions = new ArrayList<>();
    for (var parcel : result.before()) {
      Outcome<Portion> portion = parcel.portion();
      if (!portion.isKnown()) {
        return Optional.empty();
      }
      portion.toOptional().filter(p -> p.mass().grams() > 0).ifPresent(portions::add);
    }
    if (portions.isEmpty()) {
      return Optional.empty();
    }
    Mass mass = portions.stream().map(Portion::mass).reduce(Mass.ZERO, Mass::plus);
    return Optional.of(new Portion(mass, Composition.mix(portions)));
  }

  private static Optional<Located<Quantity>> target(Statement step) {
    Verb.Effect effect = Verb.of(step.word().value()).map(Verb::effect).orElse(Verb.Effect.NONE);
    if (effect != Verb.Effect.COOK && effect != Verb.Effect.BOIL) {
      return Optional.empty();
    }
    Optional<Located<Quantity>> to = step.figure(Connective.TO, Unit.Dimension.TEMPERATURE);
    return effect == Verb.Effect.COOK && to.isEmpty()
        ? step.figure(Connective.AT, Unit.Dimension.TEMPERATURE)
        : to;
  }
}
