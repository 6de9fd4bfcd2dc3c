package dev.kettlemark.cards;

import dev.kettlemark.cards.ProductsSideBySide.PartPair;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.sheets.Block;
import dev.kettlemark.sheets.Block.Column;
import dev.kettlemark.sheets.Block.Row;
import dev.kettlemark.sheets.Leaf;
import dev.kettlemark.sheets.Pair;
import dev.kettlemark.sheets.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Lays two products out as a page, piece beside piece. */
public final class ProductsPage {

  private final ProductsSideBySide both;

  private ProductsPage(ProductsSideBySide both) {
    this.both = both;
  }

  /** The page in a language; empty where there are no words in it. */
  public static Optional<Leaf> of(ProductsSideBySide both, Locale locale) {
    ProductsPage page = new ProductsPage(both);
    List<Phrase> silent = Stream.of(both.first(), both.second())
        .flatMap(side -> side.silent().stream())
        .distinct()
        .toList();
    LabelSections labels = new LabelSections(both.words(), silent);
    return Leaf.of(
        both.first().name() + "-and-" + both.second().name(),
        locale,
        Lookup.today().ask(both.second().snapshot()),
        Phrase.words(
            "compare.title",
            Phrase.given(both.first().title()),
            Phrase.given(both.second().title())),
        Phrase.words("compare.products.kind"),
        List.of(mark("compare.first", both.first()), mark("compare.second", both.second())),
        List.of(
            page.pieces(),
            page.parts(),
            labels.section(LabelWord.Kind.ALLERGEN, "allergens"),
            labels.section(LabelWord.Kind.CLAIM, "claims"),
            labels.section(LabelWord.Kind.CAUTION, "cautions-compared")),
        Leaf.Size.PAGE);
  }

  private static Phrase mark(String key, ProductSide side) {
    return Phrase.words(key, Phrase.given(side.title()), Phrase.nothing());
  }

  private Leaf.Section pieces() {
    return section(
        "figures", "compare.pieces", ComparisonPage.rows(both.figures()), both.figures());
  }

  private Leaf.Section parts() {
    List<Row> rows = new ArrayList<>();
    List<Pair> all = new ArrayList<>();
    for (PartPair part : both.parts()) {
      rows.add(Row.group(Phrase.words("told.unknown", role(part), materials(part))));
      if (part.isPaired()) {
        rows.addAll(ComparisonPage.rows(part.figures()));
        all.addAll(part.figures());
      } else {
        part.figures().stream().filter(Pair::isKnown).forEach(pair -> rows.add(alone(part, pair)));
      }
    }
    return section("parts", "compare.parts", rows, all);
  }

  private static Phrase role(PartPair part) {
    return Phrase.words("compare.part." + part.role());
  }

  private static Phrase materials(PartPair part) {
    Optional<Phrase> one = part.first().map(Phrase::given);
    Optional<Phrase> other = part.second().map(Phrase::given);
    return one.isPresent() && other.isPresent() && !part.first().equals(part.second())
        ? Phrase.words("compare.for", one.get(), other.get())
        : one.or(() -> other).orElseGet(Phrase::nothing);
  }

  /** What one piece has not is nothing that nobody knows. */
  private static Row alone(PartPair part, Pair pair) {
    Phrase none = Phrase.given("–");
    return Row.of(
        Told.name(pair),
        part.first().isPresent() ? Phrase.value(pair.first()) : none,
        part.second().isPresent() ? Phrase.value(pair.second()) : none,
        none);
  }

  private static Leaf.Section section(String word, String key, List<Row> rows, List<Pair> pairs) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Grid(
        Phrase.words(key + ".caption"),
        List.of(
            Column.text("column.figure"),
            Column.figure("column.first"),
            Column.figure("column.second"),
            Column.text("column.difference")),
        rows));
    List<Phrase> unknown = ComparisonPage.unknown(pairs);
    if (!unknown.isEmpty()) {
      blocks.add(new Block.Points(unknown));
    }
    return new Leaf.Section(word, Phrase.words(key), blocks);
  }
}
