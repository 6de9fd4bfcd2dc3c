package dev.kettlemark.features;

import dev.kettlemark.analysis.Boiling;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Experiment.StepPlace;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.answers.Answer;
import dev.kettlemark.answers.CookPlaces;
import dev.kettlemark.answers.CookTemperature;
import dev.kettlemark.answers.LocalCook;
import dev.kettlemark.answers.Wish;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Length;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What a cook step may be asked, by what the formula says of its result and by where the house lies. */
final class CookQuestions {

  /** A probe and a hand are no finer than this, in °C; common practice, no source. */
  private static final double NOTICEABLE = 0.5;

  private static final Length SEA_LEVEL = Length.ofMetres(0);

  private final ComputedFormula formula;

  CookQuestions(ComputedFormula formula) {
    this.formula = formula;
  }

  /** A question with its answer, and the title that tells it. */
  record Question(String title, Outcome<Answer> answer) {}

  /** The questions for the cook steps whose line is asked for. */
  List<Question> at(Predicate<Span> here) {
    List<Question> questions = new ArrayList<>();
    for (StepPlace place : CookPlaces.of(formula)) {
      Statement step = formula.formula().stages().get(place.stage()).steps().get(place.step());
      if (here.test(step.span())) {
        questions.addAll(wishes(wishes(), place));
        local(place).ifPresent(questions::add);
      }
    }
    return questions;
  }

  /** The questions at one cook by what the formula says of its result, and by what is usual for that. */
  List<Question> wanted(StepPlace place) {
    return wishes(Stream.concat(wishes(), usualMoisture().stream()), place);
  }

  /** What temperatures written for sea level are here, for the cook steps that are asked for. */
  List<Question> atAltitude(Predicate<Span> here) {
    return CookPlaces.of(formula).stream()
        .filter(place -> here.test(formula
            .formula()
            .stages()
            .get(place.stage())
            .steps()
            .get(place.step())
            .span()))
        .flatMap(place -> local(place).stream())
        .toList();
  }

  private List<Question> wishes(Stream<Wish> wishes, StepPlace place) {
    List<Question> questions = new ArrayList<>();
    wishes.forEach(wish -> add(CookTemperature.of(formula, place, wish), wish, questions));
    return questions;
  }

  private Optional<Wish> usualMoisture() {
    Band<Ratio> usual = formula.kitchen().threshold(Threshold.CHEWY_MOISTURE);
    return formula
        .formula()
        .facts()
        .wordOf("texture")
        .filter(word -> word.value().equals("chewy"))
        .flatMap(word -> wish(usual, new Wish.FinishedMoisture(Ratio.middleOf(usual))));
  }

  private static void add(Outcome<Answer> outcome, Wish wish, List<Question> questions) {
    outcome.ifKnown(answer -> answer
        .value("cook-temperature")
        .ifPresent(target -> questions.add(new Question(
            "Cook to " + Display.trimmed(target.figure(), 1) + " °C for " + wish.words(),
            outcome))));
  }

  /** What the formula says of its result and does not keep. */
  private Stream<Wish> wishes() {
    return Stream.of(moisture(), activity(), texture()).flatMap(Optional::stream);
  }

  private Optional<Wish> moisture() {
    return expected("moisture")
        .map(band -> wish(band, new Wish.FinishedMoisture(Ratio.middleOf(band))))
        .flatMap(wish -> wish);
  }

  private Optional<Wish> activity() {
    return expected("water-activity")
        .map(band -> wish(band, new Wish.Activity(Ratio.middleOf(band))))
        .flatMap(wish -> wish);
  }

  private Optional<Wish> wish(Band<Ratio> band, Wish wish) {
    return wish.figure(formula, 0)
        .toOptional()
        .filter(now -> !band.contains(Ratio.ofFraction(now)))
        .map(now -> wish);
  }

  private Optional<Wish> texture() {
    return formula
        .formula()
        .facts()
        .wordOf("texture")
        .flatMap(word -> Wish.Bite.ofWord(word.value()))
        .filter(bite -> new Wish.Texture(bite)
            .figure(formula, 0)
            .toOptional()
            .filter(now -> !bite.allows(now))
            .isPresent())
        .map(Wish.Texture::new);
  }

  /** The band behind {@code expect WORD}, as fractions. */
  private Optional<Band<Ratio>> expected(String word) {
    return formula
        .formula()
        .facts()
        .all("expect")
        .filter(fact -> fact.objectNames().stream()
            .map(Located::value)
            .findFirst()
            .filter(word::equals)
            .isPresent())
        .flatMap(fact -> fact.objects().stream())
        .flatMap(operand -> operand.value() instanceof Operand.Figure figure
            ? Stream.of(figure.quantity())
            : Stream.empty())
        .map(CookQuestions::band)
        .findFirst();
  }

  private static Band<Ratio> band(Quantity quantity) {
    double slack = quantity.toleranceInBase().map(t -> t.doubleValue()).orElse(0.0);
    return Band.spanning(
        Ratio.ofFraction(quantity.lowInBase().doubleValue() - slack),
        Ratio.ofFraction(quantity.highInBase().doubleValue() + slack));
  }

  /** What a temperature that was written for sea level is in this kitchen. */
  private Optional<Question> local(StepPlace place) {
    Length here = Length.ofMetres(formula.kitchen().altitudeMetres());
    StepResult step = formula.process().stages().get(place.stage()).steps().get(place.step());
    Optional<Temperature> written = Boiling.target(step.step())
        .map(band -> Temperature.ofKelvin((band.low().kelvin() + band.high().kelvin()) / 2));
    return written.flatMap(target -> CookPlaces.charge(formula, place)
        .flatMap(charge -> LocalCook.of(charge, target, SEA_LEVEL, here))
        .toOptional()
        .flatMap(answer -> answer
            .value("cook-temperature")
            .filter(found -> Math.abs(found.figure() - target.celsius()) >= NOTICEABLE)
            .map(found -> new Question(
                "Cook to " + Display.trimmed(found.figure(), 1)
                    + " °C here for the solids of " + Display.celsius(target)
                    + " at sea level (0 m → " + Display.fixed(here.metres(), 0) + " m)",
                Outcome.known(
                    LocalCook.inFormula(answer, place, Temperature.ofCelsius(found.figure())))))));
  }
}
