package dev.kettlemark.checks;

import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/** Tells of pieces that leave cavities of the last mould empty. */
public final class IdleCavities implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.information("idle-cavities", "the pieces leave cavities of the last mould empty");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return count(subject)
        .filter(pieces -> subject.isWrittenHere(pieces.span()))
        .flatMap(pieces -> mould(subject)
            .flatMap(mould -> finding(pieces, mould)
                .map(f -> OtherPlace.tool(f, subject, mould.name().value()))))
        .stream()
        .toList();
  }

  private static Optional<Located<Quantity>> count(Subject subject) {
    Optional<Statement> order = product(subject)
        .flatMap(product -> product.facts().first("make"))
        .or(() -> subject.formula().flatMap(f -> f.formula().facts().first("makes")));
    return order.flatMap(make -> make.objectFigure(Unit.Dimension.COUNT));
  }

  private static Optional<Product> product(Subject subject) {
    return subject
        .declaration()
        .flatMap(d -> d instanceof Product product ? Optional.of(product) : Optional.empty());
  }

  /** The mould that the order names, or the only one that the mass is deposited into. */
  private static Optional<House.Mould> mould(Subject subject) {
    Optional<House> house = subject
        .ask(Lookup.houseFor(subject.entry().uri()))
        .flatMap(entry -> entry.declaration())
        .flatMap(d -> d instanceof House found ? Optional.of(found) : Optional.empty());
    Stream<Located<String>> names = product(subject)
        .map(product -> named(product.facts()))
        .orElseGet(() -> subject.formula().stream()
            .flatMap(computed -> computed.formula().steps())
            .filter(step -> step.is("deposit"))
            .flatMap(step -> step.names(Connective.INTO).stream()));
    List<House.Mould> moulds = names
        .flatMap(name -> house.flatMap(h -> h.mould(name.value())).stream())
        .distinct()
        .toList();
    return moulds.size() == 1 ? Optional.of(moulds.get(0)) : Optional.empty();
  }

  private static Stream<Located<String>> named(Facts facts) {
    return facts.first("make").stream().flatMap(make -> make.names(Connective.IN).stream());
  }

  private static Optional<Finding> finding(Located<Quantity> pieces, House.Mould mould) {
    BigFraction count = pieces.value().middle();
    if (!count.getDenominator().equals(BigInteger.ONE)
        || count.signum() <= 0
        || count.doubleValue() > Integer.MAX_VALUE / 2.0
        || mould.pieces() <= 1) {
      return Optional.empty();
    }
    int wanted = count.getNumeratorAsInt();
    int full = wanted / mould.pieces();
    int over = wanted % mould.pieces();
    if (over == 0) {
      return Optional.empty();
    }
    Finding finding = INFO.at(
            pieces.span(),
            "%d pieces take %d moulds `%s`, and the last one has %d of %d cavities empty",
            wanted,
            full + 1,
            mould.name().value(),
            mould.pieces() - over,
            mould.pieces())
        .because("the mass is planned for the pieces alone; a full mould takes more");
    Finding less = full > 0 ? finding.withFix(set(pieces, full * mould.pieces())) : finding;
    return Optional.of(less.withFix(set(pieces, (full + 1) * mould.pieces())));
  }

  private static Fix set(Located<Quantity> pieces, int count) {
    return Fix.replace("Make " + count + " pieces", pieces.span(), count + " pieces");
  }
}
