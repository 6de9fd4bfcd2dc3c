package dev.kettlemark.sheets;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Experiment.StepPlace;
import dev.kettlemark.answers.CookPlaces;
import dev.kettlemark.answers.LocalCook;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Length;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.sheets.Block.Column;
import dev.kettlemark.sheets.Block.Row;
import dev.kettlemark.sheets.Shown.Made;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How hot to cook where water boils cooler. */
final class AltitudePart implements SheetPart {

  /** Most kitchens of this world lie below the last of them. */
  private static final List<Integer> METRES = List.of(0, 500, 1000, 1500, 2000, 2500);

  private record Cook(Made made, StepPlace place, Temperature target, String stage) {}

  @Override
  public Part.Kind kind() {
    return Part.Kind.ALTITUDE;
  }

  @Override
  public List<Block> of(Shown shown) {
    if (shown.reader() == SheetReader.BENCH) {
      return List.of();
    }
    List<Cook> cooks =
        shown.made().stream().flatMap(made -> cooks(made).stream()).toList();
    if (cooks.isEmpty()) {
      return List.of();
    }
    if (shown.reader() == SheetReader.PRODUCTION) {
      return List.of(Block.Lines.of(Phrase.sentence(
          "altitude.local",
          metres("altitude.house", cooks.get(0).made().formula().kitchen().altitudeMetres()))));
    }
    List<Column> columns = new ArrayList<>();
    columns.add(Column.text("column.altitude"));
    cooks.forEach(cook -> columns.add(new Column(
        Names.stage(cook.made().formula().formula().stage(cook.stage()).orElseThrow(), cook.made()),
        Column.Holds.FIGURE)));
    List<Row> rows = new ArrayList<>();
    for (int metres : METRES) {
      List<Phrase> cells = new ArrayList<>();
      cells.add(metres("altitude." + metres, metres));
      cooks.forEach(cook -> cells.add(Phrase.value(cell(cook, metres))));
      rows.add(Row.of(cells.toArray(Phrase[]::new)));
    }
    return List.of(
        new Block.Grid(Phrase.words("altitude.caption"), columns, rows),
        Block.Lines.of(Phrase.sentence("altitude.weather")));
  }

  private static Phrase metres(String id, double metres) {
    return Phrase.value(SheetFigure.written(id, SheetUnit.METRE, metres, 0));
  }

  private static List<Cook> cooks(Made made) {
    ComputedFormula formula = made.formula();
    List<Cook> cooks = new ArrayList<>();
    for (StepPlace place : CookPlaces.of(formula)) {
      var stage = formula.process().stages().get(place.stage());
      Optional<Temperature> target = stage
          .steps()
          .get(place.step())
          .step()
          .figure(Connective.TO, Unit.Dimension.TEMPERATURE)
          .map(t -> Temperature.ofCelsius(t.value().middleInBase().doubleValue()));
      target.ifPresent(t -> cooks.add(new Cook(made, place, t, stage.name())));
    }
    return cooks;
  }

  private static SheetFigure cell(Cook cook, int metres) {
    ComputedFormula formula = cook.made().formula();
    Outcome<Temperature> local = CookPlaces.charge(formula, cook.place())
        .flatMap(charge -> LocalCook.temperature(
            charge,
            cook.target(),
            Length.ofMetres(formula.kitchen().altitudeMetres()),
            Length.ofMetres(metres)));
    return new SheetFigure(
        cook.made().name() + "." + cook.stage() + ".cook.at-" + metres,
        SheetUnit.CELSIUS,
        local.map(t -> SheetFigure.Reach.of(t.celsius())),
        SheetFigure.Spread.NONE,
        0,
        SheetFigure.Basis.MODEL);
  }
}
