package dev.kettlemark.reading;

import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.FactWord;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.syntax.Atom;
import dev.kettlemark.syntax.Clause;
import dev.kettlemark.syntax.Group;
import dev.kettlemark.syntax.Line;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/** Reads a product. */
final class ProductReader {

  private final Heading heading;
  private final Body body;
  private final AmountReader amounts;

  ProductReader(Heading heading, Body body) {
    this.heading = heading;
    this.body = body;
    this.amounts = new AmountReader(body);
  }

  Product read() {
    List<Product.Part> parts = new ArrayList<>();
    List<Statement> facts = new ArrayList<>();
    for (Line line : body.lines()) {
      if (line instanceof Line.StatementLine statement) {
        if (FactWord.PRODUCT_PART.contains(statement.head().text())) {
          part(statement).ifPresent(parts::add);
        }
        if (body.known(statement, FactWord.PRODUCT, "fact of a product")) {
          facts.add(AcceptanceReader.checked(body, Body.statement(statement)));
        }
      } else {
        body.reportMisplaced(line, "in a product");
      }
    }
    Facts all = new Facts(facts);
    return new Product(
        heading.name(),
        heading.title(),
        parts.stream().map(part -> withSpare(part, all)).toList(),
        figure(all, "make", Unit.Dimension.COUNT),
        figure(all, "loss", Unit.Dimension.SHARE),
        all);
  }

  /** {@code coat 24 % of finished couverture-dark-62}. */
  private Optional<Product.Part> part(Line.StatementLine line) {
    if (line.objects().isEmpty()
        || !(line.objects().get(0).atoms().get(0) instanceof Atom.QuantityAtom figure)) {
      body.report(
          line.span(),
          "a part of a piece reads `centre 18.0 g NAME` or `coat 24 % of finished NAME`");
      return Optional.empty();
    }
    List<Atom> names = new ArrayList<>();
    line.objects().forEach(group -> names.addAll(group.atoms()));
    names.remove(0);
    Optional<Basis> basis = Optional.empty();
    for (Clause clause : line.clauses()) {
      List<Atom> behind =
          clause.groups().stream().map(Group::atoms).flatMap(List::stream).toList();
      if (clause.word() == Connective.OF
          && !behind.isEmpty()
          && behind.get(0) instanceof Atom.NameAtom name) {
        basis = Optional.of(Basis.of(new Located<>(name.text(), name.span())));
        names.addAll(behind.subList(1, behind.size()));
      }
    }
    return Optional.of(new Product.Part(
        line.head().text(),
        new Located<>(amounts.measure(figure, basis), figure.span()),
        material(names),
        Optional.empty(),
        line.span()));
  }

  /** {@code spare 60 % couverture-dark-62} belongs to the part of that material. */
  private static Product.Part withSpare(Product.Part part, Facts facts) {
    Optional<BigFraction> spare = facts
        .all("spare")
        .filter(fact -> fact.objectNames().isEmpty()
            ? part.role().equals("coat")
            : part.material()
                .filter(m -> m.value().equals(fact.objectNames().get(0).value()))
                .isPresent())
        .flatMap(fact -> fact.objectFigure(Unit.Dimension.SHARE).stream())
        .map(figure -> figure.value().middleInBase())
        .findFirst();
    return new Product.Part(part.role(), part.measure(), part.material(), spare, part.span());
  }

  private static Optional<Located<String>> material(List<Atom> atoms) {
    for (Atom atom : atoms) {
      if (atom instanceof Atom.NameAtom name) {
        return Optional.of(new Located<>(name.text(), name.span()));
      }
    }
    return Optional.empty();
  }

  private Optional<Located<BigFraction>> figure(
      Facts facts, String word, Unit.Dimension dimension) {
    Optional<Statement> fact = facts.first(word);
    Optional<Located<BigFraction>> figure =
        fact.flatMap(f -> f.objectFigure(dimension)).map(q -> q.map(v -> v.middleInBase()));
    if (fact.isPresent() && figure.isEmpty() && hasFigure(fact.get())) {
      body.report(fact.get().span(), "`" + word + "` needs " + example(dimension));
    }
    return figure;
  }

  private static boolean hasFigure(Statement fact) {
    return fact.objects().stream()
        .anyMatch(operand ->
            operand.value() instanceof Operand.Figure f && f.quantity().unit().isPresent());
  }

  private static String example(Unit.Dimension dimension) {
    return dimension == Unit.Dimension.COUNT
        ? "a count, as in `make 96 pieces`"
        : "a share, as in `loss 4 % of centre`";
  }
}
