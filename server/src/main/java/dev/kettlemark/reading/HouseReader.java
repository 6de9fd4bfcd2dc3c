package dev.kettlemark.reading;

import dev.kettlemark.model.Connective;
import dev.kettlemark.model.FactWord;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.quantity.Volume;
import dev.kettlemark.text.Excerpt;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/** Reads a house. */
final class HouseReader {

  private final Heading heading;
  private final Body body;

  HouseReader(Heading heading, Body body) {
    this.heading = heading;
    this.body = body;
  }

  House read() {
    Facts facts = new Facts(body.facts(FactWord.HOUSE, "a house"));
    return new House(
        heading.name(),
        heading.title(),
        altitude(facts),
        room(facts),
        facts.all("scale").flatMap(fact -> scale(fact).stream()).toList(),
        Stream.concat(facts.all("bowl"), facts.all("pan"))
            .flatMap(fact -> vessel(fact).stream())
            .toList(),
        facts.all("mould").flatMap(fact -> mould(fact).stream()).toList(),
        facts.all("frame").flatMap(fact -> frame(fact).stream()).toList(),
        settings(facts),
        facts);
  }

  private static double altitude(Facts facts) {
    return facts
        .first("altitude")
        .flatMap(fact -> fact.objectFigure(Unit.Dimension.LENGTH))
        .map(figure -> figure.value().middleInBase().doubleValue())
        .orElse(0.0);
  }

  private static Temperature room(Facts facts) {
    return facts
        .first("room")
        .flatMap(fact -> fact.figure(Unit.Dimension.TEMPERATURE))
        .map(figure -> Temperature.ofCelsius(figure.value().middleInBase().doubleValue()))
        .orElse(House.USUAL_ROOM);
  }

  /** {@code scale fine reads 0.01 g to 200 g}. */
  private Optional<House.Scale> scale(Statement fact) {
    Optional<BigFraction> step =
        fact.objectFigure(Unit.Dimension.MASS).map(figure -> figure.value().middleInBase());
    Optional<BigFraction> capacity = fact.figure(Connective.TO, Unit.Dimension.MASS)
        .map(figure -> figure.value().middleInBase());
    Optional<Located<String>> name = name(fact);
    if (name.isEmpty()
        || step.isEmpty()
        || capacity.isEmpty()
        || step.get().signum() <= 0
        || capacity.get().compareTo(step.get()) < 0) {
      body.report(fact.span(), "a scale reads `scale fine reads 0.01 g to 200 g`");
      return Optional.empty();
    }
    return Optional.of(new House.Scale(name.get(), step.get(), capacity.get()));
  }

  /** {@code bowl planetary-5 holds 4.8 L whips 90-1800 g weighs 1.1 kg}. */
  private Optional<House.Vessel> vessel(Statement fact) {
    Optional<Located<String>> name = name(fact);
    if (name.isEmpty()) {
      body.report(fact.span(), "this tool has no name");
      return Optional.empty();
    }
    if (fact.objects().stream().anyMatch(HouseReader::isNothing)) {
      body.report(
          fact.span(),
          "a tool reads `bowl planetary-5 holds 4.8 L whips 90-1800 g weighs 1.1 kg`, with figures"
              + " above 0");
      return Optional.empty();
    }
    return Optional.of(new House.Vessel(
        fact.word().value(),
        name.get(),
        behind(fact, "holds", Unit.Dimension.VOLUME)
            .map(q -> Volume.ofMillilitres(q.middleInBase().doubleValue())),
        behind(fact, "whips", Unit.Dimension.MASS)
            .map(q -> Band.spanning(grams(q.lowInBase()), grams(q.highInBase()))),
        behind(fact, "weighs", Unit.Dimension.MASS).map(q -> grams(q.middleInBase()))));
  }

  /** {@code mould half-sphere has 24 pieces of 22.0 mL}. */
  private Optional<House.Mould> mould(Statement fact) {
    Optional<Integer> pieces = fact.objectFigure(Unit.Dimension.COUNT)
        .map(figure -> figure.value().middle().intValue());
    Optional<Volume> cavity = fact.figure(Connective.OF, Unit.Dimension.VOLUME)
        .map(figure -> Volume.ofMillilitres(figure.value().middleInBase().doubleValue()));
    if (name(fact).isEmpty()
        || pieces.filter(n -> n > 0).isEmpty()
        || cavity.filter(volume -> volume.millilitres() > 0).isEmpty()) {
      body.report(fact.span(), "a mould reads `mould half-sphere has 24 pieces of 22.0 mL`");
      return Optional.empty();
    }
    return Optional.of(new House.Mould(name(fact).get(), pieces.get(), cavity.get()));
  }

  /** {@code frame slab-400 measures 400 x 300 x 15 mm}. */
  private Optional<House.Frame> frame(Statement fact) {
    List<Quantity> sides = fact.objects().stream()
        .flatMap(operand -> operand.value() instanceof Operand.Figure figure
            ? Stream.of(figure.quantity())
            : Stream.empty())
        .toList();
    Optional<Unit> unit =
        sides.isEmpty() ? Optional.empty() : sides.get(sides.size() - 1).unit();
    if (name(fact).isEmpty()
        || sides.size() != 3
        || sides.stream().anyMatch(side -> side.low().signum() <= 0)
        || unit.filter(u -> u.measures(Unit.Dimension.LENGTH)).isEmpty()) {
      body.report(fact.span(), "a frame reads `frame slab measures 400 x 300 x 15 mm`");
      return Optional.empty();
    }
    double millimetres = unit.get().factor().doubleValue() * 1000;
    return Optional.of(new House.Frame(
        name(fact).get(),
        sides.get(0).middle().doubleValue() * millimetres,
        sides.get(1).middle().doubleValue() * millimetres,
        sides.get(2).middle().doubleValue() * millimetres));
  }

  private List<House.Setting> settings(Facts facts) {
    Set<String> words = new HashSet<>();
    return facts
        .all("threshold")
        .flatMap(fact -> setting(fact).stream())
        .filter(setting -> isFirst(setting, words))
        .toList();
  }

  private boolean isFirst(House.Setting setting, Set<String> words) {
    boolean isFirst = words.add(setting.word().value());
    if (!isFirst) {
      body.report(
          setting.span(),
          "the threshold " + Excerpt.of(setting.word().value())
              + " is already set above, and the first line holds");
    }
    return isFirst;
  }

  /** {@code threshold total-tolerance 0.1 % "why" from "who says so" on 2026-11-25}. */
  private Optional<House.Setting> setting(Statement fact) {
    List<Located<Quantity>> figures = fact.objects().stream()
        .flatMap(operand -> operand.value() instanceof Operand.Figure figure
            ? Stream.of(new Located<>(figure.quantity(), operand.span()))
            : Stream.empty())
        .toList();
    if (fact.objectNames().size() != 1 || figures.size() != 1) {
      if (!body.hasMalformedFigure(fact.span())) {
        body.report(fact.span(), "a threshold reads `threshold total-tolerance 0.05 % \"why\"`");
      }
      return Optional.empty();
    }
    return Optional.of(new House.Setting(
        fact.objectNames().get(0),
        figures.get(0),
        text(fact.objects().stream()),
        text(fact.clauses().stream()
            .filter(clause -> clause.word() == Connective.FROM)
            .flatMap(clause -> clause.operands().stream())),
        fact.days(Connective.ON).stream().findFirst().map(Located::value),
        fact.span()));
  }

  private static Optional<String> text(Stream<Located<Operand>> operands) {
    return operands
        .flatMap(operand ->
            operand.value() instanceof Operand.Text text ? Stream.of(text.text()) : Stream.empty())
        .findFirst();
  }

  private static boolean isNothing(Located<Operand> operand) {
    return operand.value() instanceof Operand.Figure figure
        && figure.quantity().low().signum() <= 0;
  }

  private static Optional<Located<String>> name(Statement fact) {
    return fact.objectNames().stream().findFirst();
  }

  /** The figure that follows a plain word. */
  private static Optional<Quantity> behind(Statement fact, String word, Unit.Dimension dimension) {
    boolean seen = false;
    for (Located<Operand> operand : fact.objects()) {
      if (operand.value() instanceof Operand.Name name) {
        seen = name.word().equals(word);
      } else if (seen
          && operand.value() instanceof Operand.Figure figure
          && figure.quantity().measures(dimension)) {
        return Optional.of(figure.quantity());
      }
    }
    return Optional.empty();
  }

  private static Mass grams(BigFraction value) {
    return Mass.ofGrams(value.doubleValue());
  }
}
