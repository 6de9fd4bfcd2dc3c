package dev.kettlemark.features;

import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.ResolvedFormula;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Product;
import java.util.List;
import java.util.stream.Stream;

/**
 * The user's formulas and products that hold a material, what a variant inherits included.
 *
 * @param formulas names, in order of file and place
 * @param released how many of the formulas are released
 * @param products names, in order of file and place
 */
public record WhereUsed(List<String> formulas, long released, List<String> products) {

  private static final int MOST_NAMED = 4;

  public WhereUsed {
    formulas = List.copyOf(formulas);
    products = List.copyOf(products);
  }

  public static WhereUsed of(Snapshot snapshot, String material) {
    List<Formula> formulas = snapshot.library().ownDocuments().stream()
        .flatMap(document -> document.entries().stream())
        .flatMap(entry -> snapshot.result(Formulas.RESOLVED, entry).stream())
        .map(ResolvedFormula::formula)
        .filter(formula -> formula.amounts().stream()
            .anyMatch(line -> line.ingredient().value().equals(material)))
        .toList();
    List<String> products = snapshot.library().ownDocuments().stream()
        .flatMap(document -> document.entries().stream())
        .flatMap(entry -> entry.declaration().stream())
        .flatMap(d -> d instanceof Product product ? Stream.of(product) : Stream.empty())
        .filter(product -> product.parts().stream()
            .flatMap(part -> part.material().stream())
            .anyMatch(part -> part.value().equals(material)))
        .map(product -> product.name().value())
        .toList();
    return new WhereUsed(
        formulas.stream().map(formula -> formula.name().value()).toList(),
        formulas.stream()
            .filter(formula -> formula.facts().says("status", "released"))
            .count(),
        products);
  }

  /** One sentence in Markdown. */
  String sentence() {
    if (formulas.isEmpty() && products.isEmpty()) {
      return "No formula or product of this library uses it.";
    }
    String inFormulas = formulas.isEmpty()
        ? ""
        : count(formulas, "formula") + (released > 0 ? " (" + released + " released)" : "") + ": "
            + Markdown.some(formulas, MOST_NAMED);
    String inProducts = products.isEmpty()
        ? ""
        : count(products, "product") + ": " + Markdown.some(products, MOST_NAMED);
    String between = inFormulas.isEmpty() || inProducts.isEmpty() ? "" : "; ";
    return "Used in " + inFormulas + between + inProducts + ".";
  }

  private static String count(List<String> names, String word) {
    return names.size() + " " + word + (names.size() == 1 ? "" : "s");
  }
}
