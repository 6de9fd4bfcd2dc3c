package dev.kettlemark.sheets;

import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.answers.AgentPower;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.sheets.SheetFigure.Basis;
import dev.kettlemark.sheets.SheetFigure.Reach;
import dev.kettlemark.sheets.SheetFigure.Spread;
import dev.kettlemark.sheets.Shown.Made;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Two foamed formulas of the same batch, figure by figure: with egg first. */
final class FoamPair {

  /** The word of the pair of times. */
  static final String WHIPPING = "whipping-time";

  private final Made egg;
  private final Made own;
  private final List<Pair> pairs = new ArrayList<>();

  private FoamPair(Made egg, Made own) {
    this.egg = egg;
    this.own = own;
  }

  static List<Pair> of(Shown shown, Made egg, Made own) {
    FoamPair both = new FoamPair(egg, own);
    both.foam(shown);
    both.eating();
    return List.copyOf(both.pairs);
  }

  private void foam(Shown shown) {
    AgentPower with = new AgentPower(shown.snapshot(), egg.formula());
    AgentPower without = new AgentPower(shown.snapshot(), own.formula());
    add("whipping-protein", share(egg, with), share(own, without));
    add("as-egg-white", asWhite(egg, with), asWhite(own, without));
    add(WHIPPING, whipping(egg), whipping(own));
  }

  private static SheetFigure share(Made made, AgentPower power) {
    return practice(made, "whipping-protein", power.whippingProtein());
  }

  private static SheetFigure asWhite(Made made, AgentPower power) {
    return practice(made, "as-egg-white", power.as(AgentPower.WHITE, AgentPower.WHIPPING));
  }

  private static SheetFigure practice(Made made, String word, Outcome<Double> fraction) {
    return new SheetFigure(
        made.name() + "." + word,
        SheetUnit.PERCENT,
        fraction.map(f -> Reach.of(100 * f)),
        Spread.NONE,
        2,
        Basis.PRACTICE);
  }

  /** All that the steps say of it; unknown where one of them ends by its look. */
  private static SheetFigure whipping(Made made) {
    List<Double> times = times(made);
    Outcome<Reach> all = times.isEmpty() || times.size() < whips(made).count()
        ? Outcome.unknown(Reason.MISSING_FIGURE, "a step ends by its look and says no time")
        : Outcome.known(Reach.of(times.stream().mapToDouble(t -> t).sum()));
    return new SheetFigure(
        made.name() + ".whipping-time", SheetUnit.SECOND, all, Spread.NONE, 0, Basis.WRITTEN);
  }

  private static Stream<Statement> whips(Made made) {
    return made.formula().formula().steps().filter(step -> step.is(Verb.WHIP.word()));
  }

  private static List<Double> times(Made made) {
    return whips(made)
        .flatMap(step -> step.figure(Connective.FOR, Unit.Dimension.TIME).stream())
        .map(time -> time.value().middleInBase().doubleValue())
        .toList();
  }

  /** The times that are said, where not all are. */
  static Optional<SheetFigure> saidTime(Made made) {
    double seconds = times(made).stream().mapToDouble(t -> t).sum();
    return seconds > 0
        ? Optional.of(
            SheetFigure.written(made.name() + ".whipping-time.said", SheetUnit.SECOND, seconds, 0))
        : Optional.empty();
  }

  private void eating() {
    add("moisture", moisture(egg), moisture(own));
    add("water-activity", activity(egg), activity(own));
    add("sweetness", sweetness(egg), sweetness(own));
    add("density", density(egg), density(own));
  }

  private static SheetFigure moisture(Made made) {
    return SheetFigure.share(
        made.name() + ".moisture", made.figures().flatMap(MassFigures::moisture), 1);
  }

  private static SheetFigure activity(Made made) {
    return FiguresPart.activity(made.name(), made.figures());
  }

  private static SheetFigure sweetness(Made made) {
    return SheetFigure.model(
        made.name() + ".sweetness",
        SheetUnit.NUMBER,
        made.figures()
            .flatMap(MassFigures::sweetness)
            .map(band -> SheetFigure.reach(band, Ratio::fraction)),
        2);
  }

  private static SheetFigure density(Made made) {
    return SheetFigure.model(
        made.name() + ".density",
        SheetUnit.GRAM_PER_MILLILITRE,
        made.figures()
            .flatMap(MassFigures::density)
            .map(band -> SheetFigure.reach(band, Density::gramsPerMillilitre)),
        2);
  }

  private void add(String word, SheetFigure first, SheetFigure second) {
    pairs.add(new Pair(word, first, second));
  }
}
