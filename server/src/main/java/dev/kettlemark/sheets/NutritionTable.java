package dev.kettlemark.sheets;

import dev.kettlemark.labelling.Nutrition;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.sheets.Block.Column;
import dev.kettlemark.sheets.Block.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The nutrition declaration of a market, by its own energy factors and rounded as it asks for. */
final class NutritionTable {

  private final Nutrition nutrition;
  private final String id;

  private NutritionTable(Nutrition nutrition) {
    this.nutrition = nutrition;
    this.id = "nutrition." + nutrition.market().name().toLowerCase(Locale.ROOT) + ".";
  }

  static List<Block> of(Nutrition nutrition) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new NutritionTable(nutrition).grid());
    List<Phrase> reasons = nutrition.rows().stream()
        .flatMap(row -> row.per100()
            .fold(
                known -> Stream.<Phrase>empty(),
                unknown ->
                    Stream.of(Phrase.words("told.unknown", name(row), Phrase.told(unknown.why())))))
        .toList();
    if (!reasons.isEmpty()) {
      blocks.add(new Block.Points(reasons));
    }
    return blocks;
  }

  private Block grid() {
    List<Column> columns = new ArrayList<>();
    columns.add(Column.text("column.nutrient"));
    columns.add(Column.figure("column.hundred"));
    nutrition
        .piece()
        .ifPresent(piece -> columns.add(
            new Column(Phrase.words("column.piece", piece(piece)), Column.Holds.FIGURE)));
    return new Block.Grid(
        Phrase.words("nutrition.caption"),
        columns,
        nutrition.rows().stream().map(this::row).toList());
  }

  private static Phrase piece(Mass piece) {
    return Phrase.value(SheetFigure.exact("nutrition.piece", SheetUnit.GRAM, piece.grams(), 1));
  }

  private Row row(Nutrition.Row row) {
    List<Phrase> cells = new ArrayList<>();
    Phrase name = name(row);
    cells.add(row.isPart() ? Phrase.words("nutrition.part", name) : name);
    cells.add(told(row, ".in-100-g", row.per100()));
    row.perPiece().ifPresent(amount -> cells.add(told(row, ".in-piece", amount)));
    return new Row(cells, Row.Rank.PLAIN, Optional.empty());
  }

  private static Phrase name(Nutrition.Row row) {
    return Phrase.words("nutrient." + row.name().replace(' ', '-'));
  }

  private Phrase told(Nutrition.Row row, String where, Outcome<Double> amount) {
    SheetFigure figure = new SheetFigure(
        id + row.name().replace(' ', '-') + "." + row.unit().toLowerCase(Locale.ROOT) + where,
        unit(row.unit()),
        amount.map(SheetFigure.Reach::of),
        SheetFigure.Spread.NONE,
        1,
        SheetFigure.Basis.MODEL);
    String text =
        amount.map(known -> row.rounded(known) + FigureText.THIN + row.unit()).orElse("");
    return new Phrase.Printed(figure, text);
  }

  private static SheetUnit unit(String unit) {
    return switch (unit) {
      case "kJ" -> SheetUnit.KILOJOULE;
      case "kcal" -> SheetUnit.KILOCALORIE;
      case "mg" -> SheetUnit.MILLIGRAM;
      default -> SheetUnit.GRAM;
    };
  }
}
