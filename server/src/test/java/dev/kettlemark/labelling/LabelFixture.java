package dev.kettlemark.labelling;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The labels of one text with the built-in pantry. */
record LabelFixture(Snapshot snapshot) {

  private static final List<Document> PANTRY = Pantry.documents();

  static LabelFixture of(String text) {
    List<Document> all = new ArrayList<>(PANTRY);
    all.add(Document.of("bench.kettle", text));
    return new LabelFixture(Snapshot.of(Library.of(all)));
  }

  /** The label of a formula or product. */
  Label label(String name) {
    Entry entry = snapshot
        .library()
        .find(Kind.MATERIAL, name)
        .or(() -> snapshot.library().find(Kind.PRODUCT, name))
        .orElseThrow();
    return Labels.label(snapshot, entry).orElseThrow();
  }

  MarketAllergens allergens(String name, Market market) {
    return MarketAllergens.of(label(name).allergens(), market);
  }

  static String texts(List<MarketAllergens.Listed> listed) {
    return listed.stream().map(MarketAllergens.Listed::text).collect(Collectors.joining("; "));
  }

  static String names(List<IngredientUse> uses) {
    return uses.stream().map(IngredientUse::name).collect(Collectors.joining(", "));
  }

  /** The grams of an ingredient in 100 g of the finished food. */
  double grams(String name, String ingredient) {
    return label(name).makeup().uses().stream()
        .filter(use -> use.name().equals(ingredient))
        .map(IngredientUse::share)
        .findFirst()
        .orElse(Outcome.known(Ratio.ZERO))
        .map(Ratio::percent)
        .orElse(Double.NaN);
  }
}
