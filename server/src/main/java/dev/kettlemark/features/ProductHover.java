package dev.kettlemark.features;

import dev.kettlemark.labelling.Labels;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Product;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.scaling.ComputedProduct;
import dev.kettlemark.scaling.Products;
import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;

/** A product: what each part weighs on one piece, and what all pieces need. */
final class ProductHover implements HoverAnswer {

  @Override
  public Optional<HoverText> to(Pointed pointed) {
    Optional<Symbols.Found> name = pointed.named(Symbol.Kind.PRODUCT);
    if (name.isPresent()) {
      return pointed
          .snapshot()
          .library()
          .find(Kind.PRODUCT, name.get().symbol().name())
          .flatMap(entry -> text(pointed, entry, name.get().occurrence().span()));
    }
    return pointed
        .figure()
        .filter(figure -> isPart(pointed, figure.span()))
        .flatMap(figure -> text(pointed, pointed.entry(), figure.span()));
  }

  private static boolean isPart(Pointed pointed, Span figure) {
    return pointed
        .entry()
        .declaration()
        .filter(d -> d instanceof Product product
            && product.parts().stream().anyMatch(part -> part.measure().span().equals(figure)))
        .isPresent();
  }

  private static Optional<HoverText> text(Pointed pointed, Entry entry, Span span) {
    return Products.computed(pointed.snapshot(), entry)
        .map(product -> pointed.text(
            text(
                product,
                Labels.label(pointed.snapshot(), entry).map(LabelLines::of).orElse("")),
            span));
  }

  private static Markdown text(ComputedProduct computed, String label) {
    Product product = computed.product();
    Markdown markdown = new Markdown();
    markdown.paragraph("**" + Markdown.plain(product.shownName()) + "** — product "
        + Markdown.code(product.name().value()));
    markdown.paragraph(computed
        .pieceGrams()
        .fold(
            mass -> "One piece weighs " + Display.mass(mass) + ".",
            unknown -> "What one piece weighs is unknown: " + unknown.because() + "."));
    markdown.table(
        List.of("part", "of", "on one piece", "of the piece"),
        computed.parts().stream().map(ProductHover::row).toList());
    markdown.paragraph(String.join(
        "  \n", computed.needs().stream().map(need -> need(product, need)).toList()));
    markdown.paragraph(label);
    markdown.paragraph(CautionText.sentences(product.facts().wordsOf("caution")));
    return markdown;
  }

  private static List<String> row(ComputedProduct.PartWeight part) {
    return List.of(
        part.part().role(),
        part.part().material().map(Located::value).map(Markdown::code).orElse(""),
        part.mass().map(Display::mass).orElse("unknown"),
        part.ofFinished().map(Display::percent).orElse("unknown"));
  }

  private static String need(Product product, ComputedProduct.Need need) {
    String pieces = product
        .pieces()
        .map(count -> Display.trimmed(count.value().doubleValue(), 2) + " pieces")
        .orElse("The pieces");
    String batch = need.scaling()
        .map(scaling -> ", from a batch of " + scaling.batchText())
        .orElse("");
    return pieces + " need " + Display.batch(need.withLoss()) + " of "
        + Markdown.code(need.material()) + ", loss and spare included" + batch + ".";
  }
}
