package dev.kettlemark.checks;

import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Variant;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.scaling.Products;
import dev.kettlemark.text.Excerpt;
import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reports a coat of so much of the centre where a sister product has the same figure of the finished
 * piece.
 *
 * <p>Sisters have the same coat, or centres that come from one formula.
 */
public final class CoatBasisOfSister implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "coat-basis-of-sister", "two sister products have the same coat figure on another basis");

  private static final Pattern OF_CENTRE = Pattern.compile("\\s+of\\s+centre");

  /** A variant of a variant of a variant is as far as anybody goes. */
  private static final int MOST_PARENTS = 8;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return product(subject.entry()).stream()
        .flatMap(product -> coats(product, basis -> basis.words().equals("centre"))
            .flatMap(coat -> sister(subject, product, coat).stream()
                .map(sister -> finding(subject, product, coat, sister))))
        .toList();
  }

  private static Optional<Product> product(Entry entry) {
    return entry
        .declaration()
        .flatMap(d -> d instanceof Product product ? Optional.of(product) : Optional.empty());
  }

  private static Stream<Product.Part> coats(Product product, Predicate<Basis> isOf) {
    return product.parts().stream()
        .filter(part -> part.role().equals("coat"))
        .filter(part -> part.measure().value() instanceof Measure.Share share
            && share.basis().filter(isOf).isPresent());
  }

  /** A coat of another product. */
  private record Sister(Entry entry, Product product, Product.Part coat) {}

  private static Optional<Sister> sister(Subject subject, Product product, Product.Part coat) {
    return subject.ask(Lookup.names(Kind.PRODUCT)).stream()
        .sorted()
        .filter(name -> !name.equals(product.name().value()))
        .flatMap(name -> subject.ask(Lookup.of(Kind.PRODUCT, name)).stream())
        .flatMap(entry -> product(entry).stream()
            .flatMap(other -> coats(other, Basis.Finished.class::isInstance)
                .filter(part -> fraction(part).equals(fraction(coat)))
                .filter(part -> isSame(part.material(), coat.material())
                    || family(subject, other)
                        .filter(found -> family(subject, product).equals(Optional.of(found)))
                        .isPresent())
                .map(part -> new Sister(entry, other, part))))
        .findFirst();
  }

  private static Optional<Object> fraction(Product.Part part) {
    return part.measure().value() instanceof Measure.Share share
        ? Optional.of(share.fraction())
        : Optional.empty();
  }

  private static boolean isSame(Optional<Located<String>> one, Optional<Located<String>> other) {
    return one.isPresent() && one.map(Located::value).equals(other.map(Located::value));
  }

  /** The formula that the centre comes from, through all variants. */
  private static Optional<String> family(Subject subject, Product product) {
    Optional<String> name = product.centre().flatMap(Product.Part::material).map(Located::value);
    for (int i = 0; i < MOST_PARENTS && name.isPresent(); i++) {
      Optional<String> parent = subject
          .material(name.get())
          .flatMap(d -> d instanceof Variant variant ? variant.parent() : Optional.empty())
          .map(Located::value);
      if (parent.isEmpty()) {
        break;
      }
      name = parent;
    }
    return name;
  }

  private static Finding finding(
      Subject subject, Product product, Product.Part coat, Sister sister) {
    Finding finding = INFO.at(
            coat.measure().span(),
            "%s of centre here, and of finished on %s",
            Columns.shown(coat.measure().span().of(subject.text())),
            Excerpt.of(sister.product().name().value()))
        .because("the same figure of the finished piece is more; two sisters then do not match")
        .withRelated(sister.entry().origin(sister.coat().span()), "its sister");
    return converted(subject, product, coat).map(finding::withFix).orElse(finding);
  }

  /** Writes the same grams as a share of the finished piece. */
  private static Optional<Fix> converted(Subject subject, Product product, Product.Part coat) {
    int index = product.parts().indexOf(coat);
    Span figure = coat.measure().span();
    Matcher behind =
        OF_CENTRE.matcher(subject.text()).region(figure.end(), coat.span().end());
    return behind.lookingAt()
        ? subject
            .ask(Products.computed(subject.entry()))
            .flatMap(computed -> computed.parts().get(index).ofFinished().toOptional())
            .map(share -> Display.percent(share) + " of finished")
            .map(written -> new Fix(
                "Write `" + written + "`, as many grams",
                List.of(new Columns(subject.section())
                    .replace(new Span(figure.start(), behind.end()), written))))
        : Optional.empty();
  }
}
