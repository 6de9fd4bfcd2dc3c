package dev.kettlemark.sheets;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Experiment.StepPlace;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.answers.CookPlaces;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Scope;
import dev.kettlemark.library.Task;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.sheets.Block.Column;
import dev.kettlemark.sheets.Block.Row;
import dev.kettlemark.sheets.Shown.Made;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Symptom, cause and act, only where the formula's own figures speak for it. */
final class TroublePart implements SheetPart {

  private static final double DEGREES = 2;

  /** Below this share of other saccharides a mass of sugar grains easily; common practice, no source. */
  private static final double LITTLE_DOCTOR = 0.25;

  @Override
  public Part.Kind kind() {
    return Part.Kind.TROUBLE;
  }

  @Override
  public List<Block> of(Shown shown) {
    if (!shown.isFor(SheetReader.CHEF, SheetReader.HOME)) {
      return List.of();
    }
    List<Row> rows = new ArrayList<>();
    for (Made made : shown.made()) {
      cook(made, rows);
      grain(made, rows);
      damp(shown, made, rows);
      foam(made, rows);
      MassTrouble.tell(made, rows);
      HandlingTrouble.tell(made, rows);
    }
    if (rows.isEmpty()) {
      return List.of();
    }
    return List.of(new Block.Grid(
        Phrase.words("trouble.caption"),
        List.of(
            Column.text("column.symptom"), Column.text("column.cause"), Column.text("column.act")),
        rows));
  }

  /** What two degrees more or less do to the water that is left, tried on the whole formula. */
  private static void cook(Made made, List<Row> rows) {
    ComputedFormula formula = made.formula();
    for (StepPlace place : CookPlaces.of(formula)) {
      StageResult stage = formula.process().stages().get(place.stage());
      Optional<Temperature> target = stage
          .steps()
          .get(place.step())
          .step()
          .figure(Connective.TO, Unit.Dimension.TEMPERATURE)
          .map(t -> Temperature.ofCelsius(t.value().middleInBase().doubleValue()));
      target.ifPresent(t -> {
        String id = made.name() + "." + stage.name() + ".trouble";
        Phrase name = Names.of(stage.name(), made, SheetReader.CHEF);
        Phrase off = Phrase.value(SheetFigure.exact(id + ".off", SheetUnit.NUMBER, DEGREES, 0));
        Outcome<Ratio> written = moisture(formula);
        row("soft", name, off, moisture(made, place, t, -DEGREES), written, id)
            .ifPresent(rows::add);
        row("hard", name, off, moisture(made, place, t, DEGREES), written, id).ifPresent(rows::add);
      });
    }
  }

  private static Optional<Row> row(
      String key, Phrase name, Phrase off, Outcome<Ratio> there, Outcome<Ratio> here, String id) {
    return Outcome.both(
            there,
            here,
            (t, h) -> Row.of(
                Phrase.sentence("trouble." + key),
                Phrase.sentence(
                    "trouble." + key + ".cause",
                    name,
                    off,
                    Phrase.value(water(id + "." + key, t)),
                    Phrase.value(water(id + ".written", h))),
                Phrase.sentence("trouble." + key + ".act", name)))
        .toOptional();
  }

  private static SheetFigure water(String id, Ratio water) {
    return SheetFigure.model(
        id, SheetUnit.PERCENT, Outcome.known(SheetFigure.Reach.of(water.percent())), 1);
  }

  private static Outcome<Ratio> moisture(ComputedFormula formula) {
    return formula.composition().map(made -> made.water());
  }

  private static Outcome<Ratio> moisture(
      Made made, StepPlace place, Temperature target, double off) {
    return made.titles()
        .snapshot()
        .find(Kind.MATERIAL, made.name())
        .map(entry -> made.titles()
            .snapshot()
            .result(new CookedTo(place, Temperature.ofCelsius(target.celsius() + off)), entry))
        .orElseGet(() -> Outcome.unknown(Reason.MISSING_FIGURE, "`%s` is no formula", made.name()));
  }

  /** The water of a formula of which one step is cooked to another temperature; all readers ask it. */
  private record CookedTo(StepPlace place, Temperature target) implements Task<Outcome<Ratio>> {
    @Override
    public Outcome<Ratio> compute(Entry entry, Scope scope) {
      return entry
          .declaration()
          .flatMap(declaration -> scope.ask(Formulas.computed(declaration.name().value())))
          .map(formula -> moisture(formula.experiment().cooking(place, target).compute()))
          .orElseGet(() -> Outcome.unknown(Reason.MISSING_FIGURE, "there is no such formula"));
    }
  }

  /** A fondant grains by intent; that is no trouble of it. */
  static boolean isMeantToGrain(Made made) {
    return made.formula().formula().facts().says("texture", "short");
  }

  private static void grain(Made made, List<Row> rows) {
    if (isMeantToGrain(made)) {
      return;
    }
    made.figures()
        .ifKnown(figures ->
            Outcome.both(figures.doctorShare(), figures.supersaturation(), (doctor, beyond) -> {
              if (beyond.high().fraction() > 1) {
                boolean isLittle = doctor.fraction() < LITTLE_DOCTOR;
                rows.add(Row.of(
                    Phrase.sentence("trouble.grain"),
                    Phrase.sentence(
                        isLittle ? "trouble.grain.cause.little" : "trouble.grain.cause",
                        Phrase.value(SheetFigure.model(
                            made.name() + ".supersaturation",
                            SheetUnit.NUMBER,
                            Outcome.known(reach(beyond)),
                            1)),
                        Phrase.value(SheetFigure.model(
                            made.name() + ".doctor",
                            SheetUnit.PERCENT,
                            Outcome.known(SheetFigure.Reach.of(doctor.percent())),
                            0))),
                    Phrase.sentence("trouble.grain.act")));
              }
              return beyond;
            }));
  }

  private static SheetFigure.Reach reach(Band<Ratio> band) {
    return SheetFigure.reach(band, Ratio::fraction);
  }

  /** A mass that holds less free water than the air gives takes it up and turns sticky. */
  private static void damp(Shown shown, Made made, List<Row> rows) {
    Optional<Double> humidity = shown
        .house()
        .map(House::facts)
        .flatMap(facts -> facts.first("room"))
        .flatMap(room -> room.figure(Unit.Dimension.HUMIDITY))
        .map(figure -> figure.value().highInBase().doubleValue());
    made.figures().flatMap(MassFigures::waterActivity).ifKnown(activity -> {
      Phrase own = Phrase.value(
          SheetFigure.activity(made.name() + ".water-activity", Outcome.known(activity)));
      double dry = activity.high().fraction();
      if (dry < 0.65) {
        rows.add(Row.of(
            Phrase.sentence("trouble.sticky"),
            Phrase.sentence("trouble.sticky.cause", own),
            humidity
                .map(h -> Phrase.sentence(
                    h > dry ? "trouble.sticky.act.cover" : "trouble.sticky.act",
                    Phrase.value(SheetFigure.written(
                        "house.humidity", SheetUnit.RELATIVE_HUMIDITY, 100 * h, 0))))
                .orElseGet(() -> Phrase.sentence("trouble.sticky.act.pack"))));
      }
      if (humidity.filter(h -> activity.low().fraction() > h).isPresent()) {
        rows.add(Row.of(
            Phrase.sentence("trouble.dry"),
            Phrase.sentence("trouble.dry.cause", own),
            Phrase.sentence("trouble.dry.act")));
      }
    });
  }

  private static void foam(Made made, List<Row> rows) {
    boolean isFoam =
        made.process().last().filter(last -> last.left().isAerated()).isPresent();
    if (isFoam) {
      rows.add(Row.of(
          Phrase.sentence("trouble.heavy"),
          Phrase.sentence("trouble.heavy.cause"),
          Phrase.sentence("trouble.heavy.act")));
    }
  }
}
