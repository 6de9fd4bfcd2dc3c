package dev.kettlemark.pictures;

import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One step on a time line.
 *
 * @param verb what is done
 * @param objects what it is done to; empty where that is all
 * @param time how long it takes; empty where the step does not say
 * @param courses how the temperatures go, each once
 * @param after how warm all of it is in the end
 * @param boils whether it is boiled
 */
record TimeColumn(
    String verb,
    String objects,
    Optional<Located<Quantity>> time,
    Set<Course> courses,
    Optional<Band<Temperature>> after,
    boolean boils) {

  private static final double NARROWEST = 120;
  private static final double PER_DOUBLING = 10;
  private static final double WIDEST = 220;
  private static final double A_MINUTE = 60;

  /** How one mass goes from one temperature to another. */
  record Course(Band<Temperature> from, Band<Temperature> to) {}

  /** A step as a column; empty for one that neither moves heat nor takes time. */
  static Optional<TimeColumn> of(StepResult result) {
    Statement step = result.step();
    Optional<Verb.Effect> effect = Verb.of(step.word().value()).map(Verb::effect);
    return effect
        .filter(TimeColumn::counts)
        .map(found -> new TimeColumn(
            step.word().value(),
            step.objectNames().stream().map(Located::value).collect(Collectors.joining(", ")),
            step.figure(Connective.FOR, Unit.Dimension.TIME)
                .or(() -> step.figure(Connective.OVER, Unit.Dimension.TIME)),
            courses(result),
            result.after().stream().map(StageParcel::temperature).reduce(Band::spanning),
            found == Verb.Effect.COOK || found == Verb.Effect.BOIL));
  }

  /** What time it takes, in words. */
  String timeWords() {
    return time.map(Located::value)
        .map(figure -> {
          String low = Display.duration(figure.lowInBase().doubleValue());
          String high = Display.duration(figure.highInBase().doubleValue());
          return low.equals(high) ? low : low + " to " + high;
        })
        .orElse("time not said");
  }

  /** How warm it is in the end, in words. */
  String afterWords() {
    return after.map(Display::celsius).map(band -> "then " + band).orElse("nothing in it");
  }

  /** Its room on the line: a step that takes twice as long is a little wider. */
  double width() {
    double minutes = time.map(figure -> figure.value().middleInBase().doubleValue() / A_MINUTE)
        .map(all -> Math.max(0, all))
        .orElse(0.0);
    double doublings = Math.log1p(minutes) / Math.log(2);
    return Math.min(WIDEST, NARROWEST + PER_DOUBLING * doublings);
  }

  Stream<Temperature> temperatures() {
    return courses.stream()
        .flatMap(course -> Stream.of(course.from(), course.to()))
        .flatMap(band -> Stream.of(band.low(), band.high()));
  }

  private static boolean counts(Verb.Effect effect) {
    return switch (effect) {
      case MERGE, COOK, BOIL, HEAT, AERATE, WAIT -> true;
      case MEASURE, SHAPE, NONE -> false;
    };
  }

  private static Set<Course> courses(StepResult result) {
    List<Course> all = new ArrayList<>();
    List<StageParcel> after = result.after();
    for (int i = 0; i < result.before().size() && !after.isEmpty(); i++) {
      StageParcel to = after.get(Math.min(i, after.size() - 1));
      all.add(new Course(result.before().get(i).temperature(), to.temperature()));
    }
    return new LinkedHashSet<>(all);
  }
}
