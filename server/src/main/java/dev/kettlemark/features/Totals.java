package dev.kettlemark.features;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Product;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.scaling.ComputedProduct;
import dev.kettlemark.scaling.Products;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The sums over each formula, stage and product, to stand above its heading. */
public final class Totals {

  private Totals() {}

  /**
   * One line of sums.
   *
   * @param span the name in the heading, absolute
   * @param title what is shown
   * @param subject the formula or product that a command on it would act on; empty for a stage
   */
  public record Total(Span span, String title, Optional<String> subject) {}

  /** The sums of a document, in order of place; nothing for what cannot be computed. */
  public static List<Total> of(Snapshot snapshot, Document document) {
    return document.entries().stream()
        .flatMap(entry -> Stream.concat(
            WrittenFormula.of(snapshot, entry).stream().flatMap(Totals::formula),
            Products.computed(snapshot, entry).stream()
                .flatMap(product -> product(entry, product))))
        .toList();
  }

  private static Stream<Total> formula(WrittenFormula formula) {
    List<Total> totals = new ArrayList<>();
    totals.add(new Total(
        place(formula.entry(), formula.declaration().name().span()),
        FormulaSummary.formula(formula.computed()),
        Optional.of(formula.declaration().name().value())));
    formula
        .ownStages()
        .map(stage -> new Total(
            place(formula.entry(), stage.stage().name().span()),
            FormulaSummary.stage(formula.computed(), stage),
            Optional.empty()))
        .forEach(totals::add);
    return totals.stream().filter(total -> !total.title().isEmpty());
  }

  private static Stream<Total> product(Entry entry, ComputedProduct computed) {
    Product product = computed.product();
    return pieces(computed)
        .map(title -> new Total(
            place(entry, product.name().span()),
            title,
            Optional.of(product.name().value())))
        .stream();
  }

  /** {@code 37 pieces × 42.0 g · centre 42.0 g · make 1618.8 g of orchard-bar}. */
  private static Optional<String> pieces(ComputedProduct computed) {
    Optional<Mass> piece = computed.pieceGrams().toOptional();
    if (piece.isEmpty()) {
      return Optional.empty();
    }
    List<String> told = new ArrayList<>();
    told.add(computed
            .product()
            .pieces()
            .map(count -> Display.trimmed(count.value().doubleValue(), 2) + " pieces × ")
            .orElse("")
        + Display.mass(piece.get()));
    if (computed.parts().size() > 1) {
      computed
          .parts()
          .forEach(part ->
              part.mass().ifKnown(mass -> told.add(part.part().role() + " " + Display.mass(mass))));
    }
    computed
        .needs()
        .forEach(
            need -> told.add("needs " + Display.batch(need.withLoss()) + " " + need.material()));
    return Optional.of(String.join(" · ", told));
  }

  private static Span place(Entry entry, Span span) {
    return entry.place(span).span();
  }
}
