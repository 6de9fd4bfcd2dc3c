package dev.kettlemark.sheets;

import dev.kettlemark.analysis.Boiling;
import dev.kettlemark.analysis.Kitchen;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.answers.CookMissed;
import dev.kettlemark.answers.CookPlaces;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.quantity.TemperatureDifference;
import dev.kettlemark.sheets.Limit.Range;
import dev.kettlemark.sheets.SheetFigure.Basis;
import dev.kettlemark.sheets.SheetFigure.Reach;
import dev.kettlemark.sheets.SheetFigure.Spread;
import dev.kettlemark.sheets.Shown.Made;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where a cook must end, and how much water brings it back there. */
final class CookLimits {

  /** So many degrees beyond a limit it is told what to do; an own choice, no source. */
  private static final List<Double> BEYOND = List.of(1.0, 4.0);

  private final Made made;
  private final StepResult cook;
  private final String id;
  private final TemperatureDifference accuracy;

  private CookLimits(Made made, StepResult cook, String id) {
    this.made = made;
    this.cook = cook;
    this.id = id;
    this.accuracy = kitchen().threshold(Threshold.PROBE_ACCURACY);
  }

  /**
   * The temperature and the solids of a cook; nothing for a step that cooks to no temperature.
   *
   * @param step what the step is called
   */
  static List<Limit> of(Made made, StepResult cook, Phrase step, String id) {
    CookLimits limits = new CookLimits(made, cook, id);
    return Boiling.target(cook.step())
        .filter(target -> CookPlaces.cooks(cook.step()) && cook.after().size() == 1)
        .map(target -> limits.both(step))
        .orElse(List.of());
  }

  private Kitchen kitchen() {
    return made.formula().kitchen();
  }

  private List<Limit> both(Phrase step) {
    Outcome<CookMissed> missed = CookMissed.of(cook, kitchen());
    Range range = temperatures();
    return List.of(
        new Limit(
            Phrase.words("limits.point", step, Phrase.words("limits.figure.temperature")),
            range,
            thermometer(),
            boilOn(missed, range),
            waterBack(missed, range)),
        solids(step, missed));
  }

  private Phrase thermometer() {
    boolean isWritten = !cook.after().get(0).temperature().isExact();
    return isWritten
        ? LimitTools.thermometer(made)
        : Phrase.words("limits.with.accuracy", LimitTools.thermometer(made));
  }

  /** As written, or what leaves the same solids in this kitchen where it is written for the sea level. */
  private Range temperatures() {
    Band<Temperature> local = cook.after().get(0).temperature();
    Temperature middle = Temperature.middleOf(local);
    boolean isHere =
        Boiling.meant(cook.step(), kitchen()).pressure().equals(kitchen().pressure());
    Range range = written()
        .filter(figure -> isHere)
        .flatMap(figure -> Range.of(figure, id + ".limit"))
        .orElseGet(() -> {
          SheetFigure target = new SheetFigure(
              id + ".limit.target",
              SheetUnit.CELSIUS,
              Outcome.known(Reach.of(middle.celsius())),
              Spread.NONE,
              1,
              Basis.MODEL);
          return local.isExact()
              ? Range.ofTarget(target)
              : Range.ofTarget(target)
                  .within(
                      Limit.unwritten(
                          target, id + ".limit.lower", local.low().celsius(), Basis.MODEL),
                      Limit.unwritten(
                          target, id + ".limit.upper", local.high().celsius(), Basis.MODEL));
        });
    return range.low().isPresent() ? range : byProbe(range);
  }

  private Optional<Quantity> written() {
    Statement step = cook.step();
    return step.figure(Connective.TO, Unit.Dimension.TEMPERATURE)
        .or(() -> step.figure(Connective.AT, Unit.Dimension.TEMPERATURE))
        .map(Located::value);
  }

  /** Without a tolerance nothing finer can be asked for than the thermometer shows. */
  private Range byProbe(Range range) {
    return range
        .target()
        .flatMap(target -> range
            .middle()
            .map(middle -> range.within(
                Limit.unwritten(
                    target, id + ".limit.lower", middle - accuracy.celsius(), Basis.PRACTICE),
                Limit.unwritten(
                    target, id + ".limit.upper", middle + accuracy.celsius(), Basis.PRACTICE))))
        .orElse(range);
  }

  private List<Phrase> boilOn(Outcome<CookMissed> missed, Range range) {
    List<Phrase> told = new ArrayList<>();
    told.add(Phrase.sentence("limits.cook.below", target(range)));
    List<Phrase> amounts = new ArrayList<>();
    range
        .lowest()
        .ifPresent(lowest -> BEYOND.forEach(by -> {
          Temperature read = Temperature.ofCelsius(lowest - by);
          amounts.add(reading(
              "under." + BEYOND.indexOf(by),
              read,
              missed.flatMap(cooked -> cooked.excess(read, accuracy))));
        }));
    told.add(amounts("limits.cook.below.amounts", amounts, missed));
    return told;
  }

  private List<Phrase> waterBack(Outcome<CookMissed> missed, Range range) {
    List<Phrase> told = new ArrayList<>();
    List<Phrase> amounts = new ArrayList<>();
    range
        .highest()
        .ifPresent(highest -> BEYOND.forEach(by -> {
          Temperature read = Temperature.ofCelsius(highest + by);
          amounts.add(reading(
              "over." + BEYOND.indexOf(by),
              read,
              missed.flatMap(cooked -> cooked.missing(read, accuracy))));
        }));
    told.add(amounts("limits.cook.above.amounts", amounts, missed));
    told.add(Phrase.sentence("limits.cook.above", target(range)));
    return told;
  }

  private static Phrase target(Range range) {
    return range.target().or(range::high).map(Phrase::value).orElseGet(Phrase::nothing);
  }

  /** {@code at 142 °C 9 g}, with what the thermometer may be off by. */
  private Phrase reading(String word, Temperature read, Outcome<CookMissed.Water> water) {
    String own = id + ".limit." + word;
    Outcome<Reach> reach = water.map(found ->
        new Reach(found.low().grams(), found.best().grams(), found.high().grams()));
    int decimals = reach.map(r -> r.best() < 10 ? 1 : 0).orElse(0);
    return Phrase.words(
        "limits.cook.reading",
        Phrase.value(SheetFigure.exact(own + ".read", SheetUnit.CELSIUS, read.celsius(), 1)),
        Phrase.value(SheetFigure.model(own, SheetUnit.GRAM, reach, decimals)));
  }

  /** Why there are none is told once, and not for each reading. */
  private static Phrase amounts(String key, List<Phrase> amounts, Outcome<CookMissed> missed) {
    return missed.fold(
        known -> Phrase.sentence(key, new Phrase.Listing(amounts)),
        unknown -> Phrase.sentence("limits.not-computed", Phrase.told(unknown.why())));
  }

  private Limit solids(Phrase step, Outcome<CookMissed> missed) {
    StageParcel left = cook.after().get(0);
    Band<Temperature> band = limits(left.temperature());
    SheetFigure target =
        solidsAt(missed, Temperature.middleOf(left.temperature()), id + ".limit.solids.target");
    Range range = Range.ofTarget(target)
        .within(
            solidsAt(missed, band.low(), id + ".limit.solids.lower"),
            solidsAt(missed, band.high(), id + ".limit.solids.upper"));
    return new Limit(
        Phrase.words("limits.point", step, Phrase.words("limits.figure.solids")),
        range,
        Phrase.words(
            "limits.with.solids",
            Phrase.value(SheetFigure.estimate(id + ".left", left.mass(), left.slack()))),
        List.of(
            point(left, -0.01, id + ".limit.solids.under", "limits.solids.below"),
            Phrase.sentence("limits.solids.which")),
        List.of(point(left, 0.01, id + ".limit.solids.over", "limits.solids.above")));
  }

  private Band<Temperature> limits(Band<Temperature> written) {
    return written.isExact()
        ? new Band<>(written.low().minus(accuracy), written.low().plus(accuracy))
        : written;
  }

  private static SheetFigure solidsAt(
      Outcome<CookMissed> missed, Temperature temperature, String own) {
    Outcome<Ratio> solids = missed.flatMap(cooked -> cooked.solidsAt(temperature));
    return new SheetFigure(
        own,
        SheetUnit.PERCENT,
        solids.map(share -> Reach.of(share.percent())),
        Spread.NONE,
        1,
        Basis.MODEL);
  }

  /** Water for one percent point of solids: the solids stay, and the mass is what they are a share of. */
  static Phrase point(StageParcel mass, double by, String own, String key) {
    Outcome<Double> grams = mass.portion().map(portion -> {
      double share = portion.composition().solids().fraction();
      double solids = portion.mass().grams() * share;
      return Math.abs(solids / (share + by) - solids / share);
    });
    return grams.fold(
        found -> Phrase.sentence(
            key,
            Phrase.value(SheetFigure.model(
                own, SheetUnit.GRAM, Outcome.known(Reach.of(found)), found < 10 ? 1 : 0))),
        unknown -> Phrase.sentence("limits.not-computed", Phrase.told(unknown.why())));
  }
}
