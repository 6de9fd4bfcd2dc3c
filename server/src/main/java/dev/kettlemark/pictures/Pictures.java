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

  /** 110 mm at 96 pixels to the inch: two rows, so that what does not fit leaves no page half empty. */
  private static final double PART = 420;

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

  /**
   * The same for a page of paper: a picture of heat and time is taken apart between its rows, so that its
   * letters need not shrink.
   */
  public static List<Picture> onPaper(
      ComputedFormula computed, List<ComputedProduct> products, PictureKind kind) {
    return kind == PictureKind.TIME
        ? TimePicture.within(computed, PART)
        : List.of(of(computed, products, kind));
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
