package dev.kettlemark.features;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Sheet;
import dev.kettlemark.model.Trial;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What the bench asks about a formula, one figure beside the other: the totals of its table, and what it can be scaled
 * by.
 *
 * @param formula by which other sections use it
 * @param title the display name; empty if it has none
 * @param circumstances code, version, basis, batch and place
 * @param figures in the order of the work, then how the mass eats and keeps
 * @param ingredients what is weighed in, each once
 * @param bowls of the house that whip
 * @param moulds of the house
 * @param frames of the house
 */
public record BenchFigures(
    String formula,
    String title,
    String circumstances,
    List<Item> figures,
    List<String> ingredients,
    List<String> bowls,
    List<String> moulds,
    List<String> frames) {

  /**
   * One figure.
   *
   * @param word by which it can be asked for
   * @param name what a reader calls it
   * @param text with its unit; empty where it is unknown
   * @param because why it is unknown; empty where it is known
   */
  public record Item(String word, String name, String text, String because) {}

  public BenchFigures {
    figures = List.copyOf(figures);
    ingredients = List.copyOf(ingredients);
    bowls = List.copyOf(bowls);
    moulds = List.copyOf(moulds);
    frames = List.copyOf(frames);
  }

  public static BenchFigures of(ComputedFormula computed) {
    FormulaTable table = FormulaTable.of(computed);
    Optional<House> house = computed.kitchen().house();
    return new BenchFigures(
        table.name(),
        table.title().orElse(""),
        FormulaTableWords.circumstances(table),
        FormulaTableWords.totals(table.totals()).stream()
            .map(total -> total
                .shown()
                .fold(
                    text -> new Item(total.word(), total.what(), text, ""),
                    unknown -> new Item(total.word(), total.what(), "", unknown.because())))
            .toList(),
        computed.formula().amounts().stream()
            .map(line -> line.ingredient().value())
            .distinct()
            .toList(),
        names(
            house,
            h -> h.vessels().stream()
                .filter(vessel -> vessel.whips().isPresent())
                .map(House.Vessel::name)),
        names(house, h -> h.moulds().stream().map(House.Mould::name)),
        names(house, h -> h.frames().stream().map(House.Frame::name)));
  }

  /**
   * The formula that a place in a text is about: the one around it or, in a trial or a sheet, the one that it is of;
   * elsewhere the first of the text.
   */
  public static Optional<ComputedFormula> at(Snapshot snapshot, Document document, int offset) {
    Entry here = document.entryAt(offset);
    return Stream.concat(Stream.of(here), document.entries().stream())
        .flatMap(entry -> about(snapshot, entry).stream())
        .findFirst();
  }

  private static Optional<ComputedFormula> about(Snapshot snapshot, Entry entry) {
    Optional<String> other = entry.declaration().flatMap(declaration -> {
      if (declaration instanceof Trial trial) {
        return trial.formula().map(Located::value);
      }
      return declaration instanceof Sheet sheet
          ? sheet.subject().map(Located::value)
          : Optional.empty();
    });
    Optional<Entry> formula = other.isPresent()
        ? snapshot.library().find(Kind.MATERIAL, other.get())
        : Optional.of(entry);
    return formula.flatMap(found -> Formulas.computed(snapshot, found));
  }

  private static List<String> names(
      Optional<House> house, Function<House, Stream<Located<String>>> tools) {
    return house.stream().flatMap(tools).map(Located::value).toList();
  }
}
