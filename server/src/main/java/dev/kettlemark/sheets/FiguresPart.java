package dev.kettlemark.sheets;

import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.pictures.PictureKind;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.sheets.Block.Column;
import dev.kettlemark.sheets.Block.Row;
import dev.kettlemark.sheets.Shown.Made;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the finished mass should measure: as the formula wants it, and as the model expects it. */
final class FiguresPart implements SheetPart {

  @Override
  public Part.Kind kind() {
    return Part.Kind.FIGURES;
  }

  @Override
  public List<Block> of(Shown shown) {
    if (shown.reader() == SheetReader.HOME) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>();
    boolean isWrittenOn = shown.isFor(SheetReader.PRODUCTION, SheetReader.BENCH);
    for (Made made : shown.made()) {
      List<Column> columns = new ArrayList<>(List.of(
          Column.text("column.figure"),
          Column.figure("column.wanted"),
          Column.figure("column.expected")));
      if (isWrittenOn) {
        columns.add(Column.blank("column.measured"));
      }
      List<Row> rows = new ArrayList<>();
      Outcome<MassFigures> figures = made.figures();
      add(made, "moisture", expected(figures, "moisture", made), isWrittenOn, rows);
      add(made, "water-activity", expected(figures, "water-activity", made), isWrittenOn, rows);
      add(made, "density", expected(figures, "density", made), isWrittenOn, rows);
      add(made, "overrun", expected(figures, "overrun", made), isWrittenOn, rows);
      wanted(made, "acidity")
          .ifPresent(wanted -> rows.add(row(
              "acidity", Phrase.value(wanted), Phrase.words("figures.not-modelled"), isWrittenOn)));
      blocks.add(new Block.Grid(Phrase.words("figures.caption", made.title()), columns, rows));
    }
    blocks.addAll(SheetPictures.of(shown, PictureKind.SHARES));
    return blocks;
  }

  private static void add(
      Made made, String word, SheetFigure expected, boolean isWrittenOn, List<Row> rows) {
    Optional<SheetFigure> wanted = wanted(made, word);
    if (wanted.isPresent() || expected.reach().isKnown() || !word.equals("overrun")) {
      rows.add(row(
          word,
          wanted.map(Phrase::value).orElse(Phrase.nothing()),
          Phrase.value(expected),
          isWrittenOn));
    }
  }

  private static Row row(String word, Phrase wanted, Phrase expected, boolean isWrittenOn) {
    Phrase name = Phrase.words("figure." + word);
    return isWrittenOn
        ? Row.of(name, wanted, expected, Phrase.nothing())
        : Row.of(name, wanted, expected);
  }

  private static SheetFigure expected(Outcome<MassFigures> figures, String word, Made made) {
    String id = made.name() + "." + word;
    return switch (word) {
      case "moisture" -> SheetFigure.share(id, figures.flatMap(MassFigures::moisture), 1);
      case "water-activity" -> activity(made.name(), figures);
      case "density" ->
        SheetFigure.model(
            id,
            SheetUnit.GRAM_PER_MILLILITRE,
            figures
                .flatMap(MassFigures::density)
                .map((Band<Density> band) -> SheetFigure.reach(band, Density::gramsPerMillilitre)),
            2);
      default ->
        SheetFigure.model(
            id,
            SheetUnit.PERCENT,
            figures
                .flatMap(MassFigures::overrun)
                .map((Band<Ratio> band) -> SheetFigure.reach(band, Ratio::percent)),
            0);
    };
  }

  static SheetFigure activity(String name, Outcome<MassFigures> figures) {
    return SheetFigure.activity(
        name + ".water-activity", figures.flatMap(MassFigures::waterActivity));
  }

  /** What the formula itself expects of that figure. */
  static Optional<SheetFigure> wanted(Made made, String word) {
    return made.formula()
        .formula()
        .facts()
        .all("expect")
        .filter(
            line -> line.objectNames().stream().anyMatch(name -> name.value().equals(word)))
        .flatMap(FiguresPart::quantities)
        .flatMap(written -> figure(made.name() + ".expect." + word, written.quantity()).stream())
        .findFirst();
  }

  /** A water activity and a pH are often written without a unit. */
  private static Optional<SheetFigure> figure(String id, Quantity written) {
    Quantity quantity = written.unit().isPresent()
        ? written
        : new Quantity(
            written.low(),
            written.high(),
            Optional.of(id.endsWith("acidity") ? Unit.PH : Unit.WATER_ACTIVITY),
            written.tolerance(),
            written.decimals());
    return SheetFigure.of(id, quantity);
  }

  private static Stream<Operand.Figure> quantities(Statement line) {
    return line.objects().stream()
        .map(Located::value)
        .flatMap(o -> o instanceof Operand.Figure figure ? Stream.of(figure) : Stream.empty());
  }
}
