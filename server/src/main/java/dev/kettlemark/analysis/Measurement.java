package dev.kettlemark.analysis;

import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One {@code measured} line, read against the formula that was made.
 *
 * @param line as written
 * @param figure the figure as written
 * @param quantity what it measures
 * @param stage the stage it speaks of; empty where it speaks of the whole, or of no stage that the
 *     formula has
 * @param step the verb, and what it acts on, after which it was measured; empty where the line does not say
 * @param at the temperature at which it was measured
 * @param each what one of the pieces weighs, in grams
 */
public record Measurement(
    Statement line,
    Located<Quantity> figure,
    TrialQuantity quantity,
    Optional<String> stage,
    List<String> step,
    Optional<Temperature> at,
    Optional<Double> each) {

  private static final Map<String, TrialQuantity> WORDS = Map.ofEntries(
      Map.entry("end", TrialQuantity.END),
      Map.entry("temperature", TrialQuantity.TEMPERATURE),
      Map.entry("mix", TrialQuantity.TEMPERATURE),
      Map.entry("weight", TrialQuantity.WEIGHT),
      Map.entry("finished", TrialQuantity.FINISHED),
      Map.entry("density", TrialQuantity.DENSITY),
      Map.entry("overrun", TrialQuantity.OVERRUN),
      Map.entry("aw", TrialQuantity.ACTIVITY),
      Map.entry("water-activity", TrialQuantity.ACTIVITY),
      Map.entry("water", TrialQuantity.WATER),
      Map.entry("moisture", TrialQuantity.WATER),
      Map.entry("solids", TrialQuantity.SOLIDS));

  private static final Map<TrialQuantity, Unit.Dimension> DIMENSIONS = Map.of(
      TrialQuantity.END, Unit.Dimension.TEMPERATURE,
      TrialQuantity.TEMPERATURE, Unit.Dimension.TEMPERATURE,
      TrialQuantity.WEIGHT, Unit.Dimension.MASS,
      TrialQuantity.FINISHED, Unit.Dimension.MASS,
      TrialQuantity.DENSITY, Unit.Dimension.DENSITY,
      TrialQuantity.OVERRUN, Unit.Dimension.SHARE,
      TrialQuantity.ACTIVITY, Unit.Dimension.ACTIVITY,
      TrialQuantity.WATER, Unit.Dimension.SHARE,
      TrialQuantity.SOLIDS, Unit.Dimension.SHARE);

  public Measurement {
    step = List.copyOf(step);
  }

  /** The words that say what was measured, in order of name. */
  public static List<String> words() {
    return WORDS.keySet().stream().sorted().toList();
  }

  /** Reads a line; empty where it holds no figure with a unit. */
  static Optional<Measurement> of(Statement line, Formula formula) {
    return line.objects().stream()
        .flatMap(Measurement::figures)
        .findFirst()
        .flatMap(figure ->
            figure.value().unit().map(unit -> of(line, figure, unit.dimension(), formula)));
  }

  private static Measurement of(
      Statement line, Located<Quantity> figure, Unit.Dimension dimension, Formula formula) {
    List<String> behindOf =
        line.names(Connective.OF).stream().map(Located::value).toList();
    List<String> words = line.objectNames().stream().map(Located::value).toList();
    Optional<String> stage = Stream.concat(behindOf.stream(), words.stream())
        .filter(name -> formula.stage(name).isPresent())
        .findFirst();
    // In `stream first-syrup of body` the first name is what is streamed; it may be a stage too.
    List<String> told = behindOf.isEmpty()
        ? words.stream().filter(word -> !stage.equals(Optional.of(word))).toList()
        : words;
    Optional<String> first = told.stream().findFirst();
    boolean isStep = dimension == Unit.Dimension.TEMPERATURE
        && first.filter(word -> Verb.of(word).isPresent()).isPresent();
    boolean isElsewhere = stage.isEmpty() && !behindOf.isEmpty();
    return new Measurement(
        line,
        figure,
        isElsewhere ? TrialQuantity.OTHER : quantity(first, dimension, isStep),
        stage,
        isStep ? told : List.of(),
        line.figure(Connective.AT, Unit.Dimension.TEMPERATURE)
            .map(at -> Temperature.ofCelsius(at.value().middleInBase().doubleValue())),
        line.figure(Connective.OF, Unit.Dimension.MASS)
            .map(each -> each.value().middleInBase().doubleValue()));
  }

  private static TrialQuantity quantity(
      Optional<String> word, Unit.Dimension dimension, boolean isStep) {
    if (isStep) {
      return TrialQuantity.TEMPERATURE;
    }
    if (word.isEmpty()) {
      return TrialQuantity.of(dimension);
    }
    TrialQuantity named = WORDS.getOrDefault(word.get(), TrialQuantity.OTHER);
    return DIMENSIONS.get(named) == dimension ? named : TrialQuantity.OTHER;
  }

  /** The figure in the unit of its quantity. */
  public double value() {
    return quantity.of(figure.value());
  }

  /** The figure as the reader knows it, such as {@code 140.4 °C}. */
  public String shown() {
    return quantity == TrialQuantity.OTHER
        ? Display.trimmed(figure.value().middle().doubleValue(), 3)
            + figure.value().unit().map(unit -> " " + unit.symbol()).orElse("")
        : quantity.shown(value());
  }

  /** What was measured, such as {@code end of first-syrup}. */
  public String subject() {
    String what = step.isEmpty() ? quantity.word() : "after " + String.join(" ", step);
    return quantity == TrialQuantity.OTHER
        ? String.join(
            " ",
            Stream.concat(line.objectNames().stream(), line.names(Connective.OF).stream())
                .map(Located::value)
                .toList())
        : what + stage.map(name -> (step.isEmpty() ? " of " : " in ") + name).orElse("");
  }

  private static Stream<Located<Quantity>> figures(Located<Operand> operand) {
    return operand.value() instanceof Operand.Figure figure
        ? Stream.of(new Located<>(figure.quantity(), operand.span()))
        : Stream.empty();
  }
}
