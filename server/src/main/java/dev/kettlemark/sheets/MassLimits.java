package dev.kettlemark.sheets;

import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Remark;
import dev.kettlemark.sheets.Limit.Range;
import dev.kettlemark.sheets.SheetFigure.Basis;
import dev.kettlemark.sheets.SheetFigure.Reach;
import dev.kettlemark.sheets.Shown.Made;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a finished mass, or one that a step checks, must measure. */
final class MassLimits {

  /** So far beyond its limit a density is told as an example; an own choice, no source. */
  private static final double BEYOND = 0.05;

  private final Made made;
  private final StageParcel mass;
  private final Phrase point;
  private final String id;

  /**
   * @param point where it is read
   * @param id in front of the ids of all figures
   */
  MassLimits(Made made, StageParcel mass, Phrase point, String id) {
    this.made = made;
    this.mass = mass;
    this.point = point;
    this.id = id;
  }

  private Limit limit(
      String figure, Range range, Phrase with, List<Phrase> below, List<Phrase> above) {
    return new Limit(
        Phrase.words("limits.point", point, Phrase.words("limits.figure." + figure)),
        range,
        with,
        below,
        above);
  }

  /** How light it must be; of a whipped mass without a figure what is usual. */
  Optional<Limit> density(Optional<SheetFigure> written) {
    if (written.isEmpty() && !mass.isAerated()) {
      return Optional.empty();
    }
    String own = id + ".limit.density";
    Range range = written.map(figure -> Range.of(figure, own)).orElseGet(() -> usualDensity(own));
    return Optional.of(limit(
        "density",
        range,
        Phrase.words("limits.with.cup"),
        lighter(mass.isAerated() ? "limits.foam.hold" : "limits.dense.below", range, own),
        mass.isAerated() ? heavier(range, own) : tooDense(own)));
  }

  private Range usualDensity(String own) {
    Outcome<Reach> usual =
        figures().density().map(band -> SheetFigure.reach(band, Density::gramsPerMillilitre));
    SheetFigure target =
        SheetFigure.model(own + ".target", SheetUnit.GRAM_PER_MILLILITRE, usual, 2);
    return usual
        .map(reach -> new Range(
            Optional.empty(),
            Optional.of(Limit.unwritten(target, own + ".lower", reach.low(), Basis.PRACTICE)),
            Optional.of(Limit.unwritten(target, own + ".upper", reach.high(), Basis.PRACTICE))))
        .orElse(Range.ofTarget(target));
  }

  private MassFigures figures() {
    return MassFigures.of(mass, made.formula().kitchen());
  }

  /** Whipped on, a foam takes more air; what it fills then is told for the whole batch. */
  private List<Phrase> heavier(Range range, String own) {
    List<Phrase> told = new ArrayList<>();
    told.add(Phrase.sentence("limits.foam.whip-on"));
    range
        .highest()
        .ifPresent(highest ->
            told.add(filled("limits.foam.heavy", range, highest + BEYOND, own + ".over")));
    told.add(Phrase.sentence("limits.foam.heavy.late"));
    return told;
  }

  /** A reading below the least, with what is to be done. */
  private List<Phrase> lighter(String act, Range range, String own) {
    List<Phrase> told = new ArrayList<>();
    told.add(Phrase.sentence(act));
    range
        .lowest()
        .ifPresent(lowest ->
            told.add(filled("limits.foam.light", range, lowest - BEYOND, own + ".under")));
    return told;
  }

  /** What the batch fills at a reading, and how far a piece of one size is off its weight. */
  private Phrase filled(String key, Range range, double read, String own) {
    Outcome<Mass> grams = mass.mass();
    Optional<Double> meant = range.middle().filter(density -> density > 0 && read > 0);
    if (meant.isEmpty() || !grams.isKnown()) {
      return Phrase.sentence(
          "limits.not-computed",
          Phrase.told(Remark.of("nobody can tell what the batch weighs, or what it should fill")));
    }
    double weight = grams.map(Mass::grams).orElse(0.0);
    return Phrase.sentence(
        key,
        Phrase.value(SheetFigure.exact(own + ".read", SheetUnit.GRAM_PER_MILLILITRE, read, 2)),
        millilitres(own + ".fills", weight / read),
        millilitres(own + ".meant", weight / meant.get()),
        Phrase.value(SheetFigure.exact(
            own + ".piece", SheetUnit.PERCENT, 100 * Math.abs(read / meant.get() - 1), 0)));
  }

  private static Phrase millilitres(String own, double value) {
    return Phrase.value(
        SheetFigure.model(own, SheetUnit.MILLILITRE, Outcome.known(Reach.of(value)), 2));
  }

  /** Nothing is heavier than the mass with all its air pressed out. */
  private List<Phrase> tooDense(String own) {
    SheetFigure solid = SheetFigure.model(
        own + ".without-air",
        SheetUnit.GRAM_PER_MILLILITRE,
        figures().densityWithoutAir().map(density -> Reach.of(density.gramsPerMillilitre())),
        2);
    return List.of(
        Phrase.sentence("limits.dense.above"),
        Phrase.sentence("limits.dense.most", Phrase.value(solid)));
  }

  /** Air is told by the density that it makes, which is what can be measured. */
  Optional<Limit> overrun(Optional<SheetFigure> written) {
    String own = id + ".limit.overrun";
    return written
        .map(figure -> Range.of(figure, own))
        .map(range -> limit(
            "overrun",
            range,
            Phrase.words(
                "limits.with.overrun",
                densityAt(range.highest(), own + ".upper.density"),
                densityAt(range.lowest(), own + ".lower.density")),
            List.of(
                Phrase.sentence("limits.foam.whip-on"), Phrase.sentence("limits.foam.heavy.late")),
            List.of(Phrase.sentence("limits.foam.hold"))));
  }

  private Phrase densityAt(Optional<Double> overrun, String own) {
    Outcome<Reach> reach = figures()
        .densityWithoutAir()
        .map(solid -> Reach.of(solid.gramsPerMillilitre() / (1 + overrun.orElse(0.0) / 100)));
    return Phrase.value(new SheetFigure(
        own, SheetUnit.GRAM_PER_MILLILITRE, reach, SheetFigure.Spread.NONE, 2, Basis.MODEL));
  }

  Optional<Limit> moisture(Optional<SheetFigure> written) {
    String own = id + ".limit.moisture";
    return written.map(figure -> limit(
        "moisture",
        Range.of(figure, own),
        Phrase.words("limits.with.moisture"),
        List.of(CookLimits.point(mass, 0.01, own + ".under", "limits.moisture.below")),
        List.of(CookLimits.point(mass, -0.01, own + ".over", "limits.moisture.above"))));
  }

  /** What is left of all that was weighed in: a point of it is a hundredth of the charge. */
  Optional<Limit> yieldShare(Optional<SheetFigure> written) {
    String own = id + ".limit.yield";
    double charge = made.process().charge().mass().grams();
    return written
        .map(figure -> Range.of(figure, own))
        .map(range -> limit(
            "yield",
            range,
            Phrase.words(
                "limits.with.yield",
                share(range.lowest(), charge, own + ".lower.weight"),
                share(range.highest(), charge, own + ".upper.weight")),
            List.of(Phrase.sentence(
                "limits.yield.below", share(Optional.of(1.0), charge, own + ".point"))),
            List.of(Phrase.sentence(
                "limits.yield.above", share(Optional.of(1.0), charge, own + ".point")))));
  }

  private static Phrase share(Optional<Double> percent, double charge, String own) {
    double grams = charge * percent.orElse(0.0) / 100;
    return Phrase.value(SheetFigure.exact(own, SheetUnit.GRAM, grams, grams < 10 ? 1 : 0));
  }

  /** Solids that a step checks; still in the pan, so they can be mended. */
  Limit solids(Quantity written) {
    String own = id + ".limit.solids";
    return limit(
        "solids",
        Range.of(written, own)
            .orElseGet(() -> new Range(Optional.empty(), Optional.empty(), Optional.empty())),
        Phrase.words("limits.with.refractometer"),
        List.of(CookLimits.point(mass, -0.01, own + ".under", "limits.solids.below")),
        List.of(CookLimits.point(mass, 0.01, own + ".over", "limits.solids.above")));
  }

  /** A dose of acid without a figure of how the mass buffers would be a guess. */
  Limit acidity(SheetFigure written, List<Phrase> acids) {
    Phrase what = acids.isEmpty() ? Phrase.words("limits.acid.any") : new Phrase.Listing(acids);
    List<Phrase> told = List.of(
        Phrase.sentence("limits.acid.hold"),
        Phrase.sentence("limits.acid.not-computed"),
        Phrase.sentence("limits.acid.measure", what));
    return limit(
        "acidity",
        Range.of(written, id + ".limit.acidity"),
        Phrase.words("limits.with.ph"),
        told,
        told);
  }

  Limit activity(SheetFigure written, SheetFigure expected) {
    String own = id + ".limit.water-activity";
    return limit(
        "water-activity",
        Range.of(written, own).withTarget(expected),
        Phrase.words("limits.with.activity"),
        List.of(Phrase.sentence("limits.activity.below")),
        List.of(
            Phrase.sentence("limits.activity.above"), Phrase.sentence("limits.activity.model")));
  }
}
