package dev.kettlemark.pictures;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.scaling.ComputedProduct;
import dev.kettlemark.scaling.Products;
import java.util.List;
import java.util.Optional;

/** The pictures of a formula. */
public final class Pictures {

  private Pictures() {}

  /** Draws the formula or variant of an entry; empty for other sections. */
  public static Optional<Picture> of(Snapshot snapshot, Entry entry, PictureKind kind) {
    return Formulas.computed(snapshot, entry)
        .map(computed -> of(computed, products(snapshot, computed), kind));
  }

  /** Draws a computed formula, and in its flow the products that it is made for. */
  public static Picture of(
      ComputedFormula computed, List<ComputedProduct> products, PictureKind kind) {
    return switch (kind) {
      case FLOW -> FlowPicture.of(computed, products);
      case TIME -> TimePicture.of(computed);
      case SHARES -> SharePicture.of(computed);
    };
  }

  /** The products that a formula goes into, in order of their names. */
  static List<ComputedProduct> products(Snapshot snapshot, ComputedFormula computed) {
    String name = computed.formula().name().value();
    return snapshot.library().names(Kind.PRODUCT).stream()
        .sorted()
        .flatMap(product -> snapshot.library().find(Kind.PRODUCT, product).stream())
        .flatMap(entry -> Products.computed(snapshot, entry).stream())
        .filter(made -> made.product().parts().stream()
            .flatMap(part -> part.material().stream())
            .anyMatch(material -> material.value().equals(name)))
        .toList();
  }
}
