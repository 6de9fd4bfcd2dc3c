package dev.kettlemark.sheets;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.TakeLine;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.scaling.WeighingLine;
import dev.kettlemark.scaling.WeighingList;
import dev.kettlemark.sheets.Block.Column;
import dev.kettlemark.sheets.Block.Row;
import dev.kettlemark.sheets.Shown.Made;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hipparchus.fraction.BigFraction;

/** What is weighed, stage by stage. */
final class FormulaPart implements SheetPart {

  /** Forms of which a cup or a spoon holds a weight that one can rely on. */
  private static final Set<String> SPOONABLE =
      Set.of("liquid", "syrup", "powder", "crystals", "paste");

  @Override
  public Part.Kind kind() {
    return Part.Kind.FORMULA;
  }

  @Override
  public List<Block> of(Shown shown) {
    List<Block> blocks = new ArrayList<>();
    for (Made made : shown.made()) {
      blocks.add(table(shown, made));
      List<Phrase> notes = notes(shown, made);
      if (!notes.isEmpty()) {
        blocks.add(new Block.Points(notes));
      }
    }
    return blocks;
  }

  private static Block table(Shown shown, Made made) {
    List<Row> rows = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    List<Stage> stages = made.formula().formula().stages();
    int columns = columns(shown).size();
    for (int i = 0; i < stages.size(); i++) {
      List<Row> own = stage(shown, made, i, ids);
      if (!own.isEmpty()) {
        rows.add(Row.group(
            Phrase.words(
                "formula.stage",
                Phrase.given(Integer.toString(i + 1)),
                Names.stage(stages.get(i), made)),
            new Mark(made.name(), Mark.Kind.WEIGHED, i, 0)));
        rows.addAll(own);
      }
    }
    rows.add(total(shown, made, columns));
    Phrase caption = Phrase.words("formula.caption", made.title());
    return new Block.Grid(caption, columns(shown), rows);
  }

  private static List<Column> columns(Shown shown) {
    List<Column> columns = new ArrayList<>();
    columns.add(Column.text("column.ingredient"));
    switch (shown.reader()) {
      case CHEF -> {
        columns.add(Column.figure("column.percent"));
        columns.add(Column.figure("column.weight"));
      }
      case HOME -> columns.add(Column.figure("column.weight"));
      case PRODUCTION, BENCH -> {
        if (shown.reader() == SheetReader.PRODUCTION) {
          columns.add(Column.figure("column.percent"));
        }
        columns.add(Column.figure("column.weight"));
        columns.add(Column.text("column.scale"));
        if (shown.reader() == SheetReader.PRODUCTION) {
          columns.add(Column.figure("column.tolerance"));
        }
        columns.add(Column.blank("column.lot"));
        columns.add(Column.blank("column.weighed"));
      }
    }
    if (shown.reader() != SheetReader.PRODUCTION
        && shown.reader() != SheetReader.BENCH
        && shown.request().showsVolumes()) {
      columns.add(Column.figure("column.volume"));
    }
    return columns;
  }

  private static List<Row> stage(Shown shown, Made made, int index, Set<String> ids) {
    List<Row> rows = new ArrayList<>();
    List<Amounts.LineAmount> amounts = made.formula().amounts().lines();
    List<WeighingLine> weighing = made.scaling().weighing().lines();
    for (int i = 0; i < amounts.size(); i++) {
      if (amounts.get(i).stage() == index) {
        Mark mark = new Mark(made.name(), Mark.Kind.AMOUNT, index, rows.size());
        rows.add(Row.line(line(shown, made, amounts.get(i), weighing.get(i), ids), mark));
      }
    }
    List<TakeLine> takes = made.formula().formula().stages().get(index).takes();
    if (!rows.isEmpty() || shown.reader() != SheetReader.HOME) {
      for (int i = 0; i < takes.size(); i++) {
        Mark mark = new Mark(made.name(), Mark.Kind.TAKE, index, i);
        rows.add(Row.line(take(shown, made, takes.get(i)), mark));
      }
    }
    return rows;
  }

  private static List<Phrase> line(
      Shown shown, Made made, Amounts.LineAmount amount, WeighingLine weighed, Set<String> ids) {
    String id = id(made, weighed, ids);
    Optional<Ingredient> ingredient =
        made.formula().material(weighed.ingredient()).flatMap(Material::ingredient);
    List<Phrase> cells = new ArrayList<>();
    cells.add(Phrase.together(
        Names.full(weighed.ingredient(), made),
        amount.line().at().map(at -> heat(id, at.value())).orElse(Phrase.nothing())));
    if (shown.isFor(SheetReader.CHEF, SheetReader.PRODUCTION)) {
      cells.add(Phrase.value(
          SheetFigure.percent(id + ".percent", amount.share().map(BigFraction::doubleValue))));
    }
    cells.add(Phrase.value(
        shown.reader() == SheetReader.HOME
            ? homely(weight(id, weighed), made, weighed, ingredient)
            : weight(id, weighed)));
    if (shown.isFor(SheetReader.PRODUCTION, SheetReader.BENCH)) {
      cells.add(weighed
          .scale()
          .map(scale -> Phrase.given(scale.name().value()))
          .orElse(Phrase.nothing()));
      if (shown.reader() == SheetReader.PRODUCTION) {
        cells.add(weighed
            .scale()
            .map(scale -> Phrase.value(tolerance(id, scale)))
            .orElse(Phrase.nothing()));
      }
      cells.add(Phrase.nothing());
      cells.add(Phrase.nothing());
    } else if (shown.request().showsVolumes()) {
      cells.add(volume(id, weighed, ingredient));
    }
    return cells;
  }

  /** An ingredient that stands twice in a stage is told apart by a number. */
  private static String id(Made made, WeighingLine line, Set<String> ids) {
    String base = made.name() + "." + line.stage() + "." + line.ingredient();
    String id = base;
    for (int i = 2; !ids.add(id); i++) {
      id = base + "." + i;
    }
    return id;
  }

  private static Phrase heat(String id, Temperature temperature) {
    return Phrase.words(
        "formula.at",
        Phrase.value(SheetFigure.written(id + ".at", SheetUnit.CELSIUS, temperature.celsius(), 1)));
  }

  /** What the scale shall show, in as many digits as it has. */
  private static SheetFigure weight(String id, WeighingLine line) {
    int decimals = line.scale().map(scale -> decimals(scale.step())).orElse(2);
    return SheetFigure.exact(
        id + ".weight", SheetUnit.GRAM, line.reading().doubleValue(), decimals);
  }

  /** At home whole grams are shown wherever a gram does not matter. */
  private static SheetFigure homely(
      SheetFigure weight, Made made, WeighingLine line, Optional<Ingredient> ingredient) {
    double allowed = ingredient
        .map(one -> WeighingList.allowedError(made.formula().kitchen(), one))
        .orElse(0.0);
    boolean isCoarse = line.grams().doubleValue() * allowed >= 0.5;
    return isCoarse
        ? new SheetFigure(
            weight.id(), weight.unit(), weight.reach(), weight.spread(), 0, weight.basis())
        : weight;
  }

  private static int decimals(BigFraction step) {
    int decimals = 0;
    while (decimals < 4 && step.multiply((int) Math.pow(10, decimals)).getDenominatorAsInt() != 1) {
      decimals++;
    }
    return decimals;
  }

  /** One step of the scale: nearer than that nobody can weigh here. */
  private static SheetFigure tolerance(String id, House.Scale scale) {
    return SheetFigure.written(
        id + ".tolerance", SheetUnit.GRAM, scale.step().doubleValue(), decimals(scale.step()));
  }

  /** Spoons only for what acts by no small dose and has a density that holds in a spoon. */
  private static Phrase volume(String id, WeighingLine line, Optional<Ingredient> ingredient) {
    if (ingredient.isEmpty() || ingredient.get().density().isEmpty()) {
      return Phrase.words("volume.weigh");
    }
    Ingredient one = ingredient.get();
    boolean isSpoonable = one.form().filter(SPOONABLE::contains).isPresent();
    if (!isSpoonable || WeighingList.isCritical(one)) {
      return Phrase.words(WeighingList.isCritical(one) ? "volume.only-weigh" : "volume.weigh");
    }
    double millilitres = line.reading().doubleValue() / one.density().get().gramsPerMillilitre();
    return Phrase.value(SheetFigure.exact(
        id + ".volume", SheetUnit.MILLILITRE, millilitres, millilitres < 10 ? 1 : 0));
  }

  /** What a stage takes of earlier ones, as they then are. */
  private static List<Phrase> take(Shown shown, Made made, TakeLine take) {
    boolean isAll = take.share().doubleValue() == 1;
    Phrase part = isAll
        ? Phrase.words("formula.all", taken(made, take))
        : Phrase.words(
            "formula.part",
            Phrase.value(SheetFigure.written(
                made.name() + ".take." + take.stage().value() + ".part",
                SheetUnit.PERCENT,
                100 * take.share().doubleValue(),
                1)),
            taken(made, take));
    Optional<StageResult> stage = made.process().stage(take.stage().value());
    Mass slack = stage.map(s -> s.left().slack()).orElse(Mass.ZERO);
    SheetFigure mass = SheetFigure.estimate(
        made.name() + ".take." + take.stage().value(),
        stage
            .map(s -> s.left().mass().map(m -> m.times(take.share().doubleValue())))
            .orElseGet(() -> Outcome.unknown(Reason.MISSING_FIGURE, "no stage has that name")),
        slack);
    List<Phrase> cells = new ArrayList<>();
    cells.add(part);
    if (shown.isFor(SheetReader.CHEF, SheetReader.PRODUCTION)) {
      cells.add(Phrase.nothing());
    }
    cells.add(Phrase.value(mass));
    while (cells.size() < columns(shown).size()) {
      cells.add(Phrase.nothing());
    }
    return cells;
  }

  private static Phrase taken(Made made, TakeLine take) {
    return Names.of(take.stage().value(), made, SheetReader.CHEF);
  }

  private static Row total(Shown shown, Made made, int columns) {
    List<Phrase> cells = new ArrayList<>();
    cells.add(Phrase.words("formula.total"));
    if (shown.isFor(SheetReader.CHEF, SheetReader.PRODUCTION)) {
      cells.add(Phrase.value(SheetFigure.percent(
          made.name() + ".total.percent",
          Outcome.known(made.formula().amounts().total().doubleValue()))));
    }
    cells.add(Phrase.value(YieldPart.charge(made)));
    while (cells.size() < columns) {
      cells.add(Phrase.nothing());
    }
    return Row.total(cells.toArray(Phrase[]::new));
  }

  /** What needs care on the scale: splits, premixes, and how fine a scale must be. */
  private static List<Phrase> notes(Shown shown, Made made) {
    List<Phrase> notes = new ArrayList<>();
    for (WeighingLine line : made.scaling().weighing().lines()) {
      Phrase name = Names.material(line.ingredient(), made);
      String id = made.name() + "." + line.stage() + "." + line.ingredient();
      if (line.weighings() > 1) {
        notes.add(Phrase.sentence(
            "formula.goes",
            name,
            Phrase.value(SheetFigure.exact(id + ".goes", SheetUnit.NUMBER, line.weighings(), 0))));
      }
      line.premix().ifPresent(premix -> notes.add(premix(id, name, premix, made)));
    }
    if (shown.reader() == SheetReader.HOME) {
      FineScale.of(made).ifPresent(notes::addAll);
    }
    made.scaling()
        .splits()
        .forEach(split -> notes.add(Phrase.sentence(
            split.charges() > 1 ? "formula.split" : "formula.bowl",
            Names.of(split.stage(), made, shown.reader()),
            Phrase.value(SheetFigure.exact(
                made.name() + "." + split.stage() + ".in-bowl",
                SheetUnit.GRAM,
                split.total().grams(),
                0)),
            Phrase.value(SheetFigure.exact(
                made.name() + "." + split.stage() + ".charges",
                SheetUnit.NUMBER,
                split.charges(),
                0)))));
    return notes;
  }

  static Phrase premix(String id, Phrase name, WeighingLine.Premix premix, Made made) {
    return Phrase.sentence(
        "formula.premix",
        name,
        Phrase.value(SheetFigure.exact(id + ".premix.parts", SheetUnit.NUMBER, premix.parts(), 0)),
        Names.material(premix.carrier(), made),
        Phrase.value(SheetFigure.exact(
            id + ".premix.weight", SheetUnit.GRAM, premix.grams().doubleValue(), 1)),
        Phrase.value(SheetFigure.exact(
            id + ".premix.carrier", SheetUnit.GRAM, premix.carrierGrams().doubleValue(), 1)));
  }
}
