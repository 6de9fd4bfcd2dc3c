package dev.kettlemark.reading;

import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.syntax.Atom;
import dev.kettlemark.syntax.Clause;
import dev.kettlemark.syntax.Group;
import dev.kettlemark.text.Excerpt;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads amounts: a figure, if need be its basis, and what it is an amount of. */
final class AmountReader {

  private final Body body;

  AmountReader(Body body) {
    this.body = body;
  }

  /** {@code 0.40 % of liquid guar-gum at 20 °C}; empty where no ingredient stands. */
  Optional<AmountLine> read(
      Atom.QuantityAtom figure, List<Group> objects, List<Clause> clauses, Span line) {
    Optional<Located<Basis>> basis = Optional.empty();
    List<Atom> atoms = new ArrayList<>();
    objects.forEach(group -> atoms.addAll(group.atoms()));
    for (Clause clause : clauses) {
      if (clause.word() == Connective.OF && basis.isEmpty()) {
        List<Atom> behind = atomsOf(clause);
        if (!behind.isEmpty() && behind.get(0) instanceof Atom.NameAtom name) {
          basis = Optional.of(basis(name));
          atoms.addAll(behind.subList(1, behind.size()));
        }
      }
    }
    Measure measure = measure(figure, basis.map(Located::value));
    Span measured = basis.map(b -> figure.span().to(b.span())).orElse(figure.span());
    return ingredient(atoms, figure.span(), Excerpt.of(written(figure)))
        .map(name -> new AmountLine(
            new Located<>(measure, measured), figure.quantity(), name, temperature(clauses), line));
  }

  /** {@code q.s. water}. */
  Optional<AmountLine> readSufficient(
      Span measure, List<Group> objects, List<Clause> clauses, Span line) {
    List<Atom> atoms = new ArrayList<>();
    objects.forEach(group -> atoms.addAll(group.atoms()));
    return ingredient(atoms, measure, "`q.s.`")
        .map(name -> new AmountLine(
            new Located<>(new Measure.Sufficient(), measure),
            Optional.empty(),
            name,
            temperature(clauses),
            line));
  }

  /** The measure of a figure; a figure without a readable unit is told by a rule of its own. */
  Measure measure(Atom.QuantityAtom figure, Optional<Basis> basis) {
    Optional<Quantity> quantity = figure.quantity();
    if (quantity.isEmpty() || quantity.get().unit().isEmpty()) {
      return new Measure.Unreadable();
    }
    Quantity written = quantity.get();
    Unit unit = written.unit().get();
    if (written.isRange()) {
      body.report(figure.span(), "an amount is one figure; a range cannot be weighed");
      return new Measure.Unreadable();
    }
    if (written.low().signum() < 0) {
      body.report(figure.span(), "an amount is never less than nothing");
      return new Measure.Unreadable();
    }
    return switch (unit.dimension()) {
      case SHARE -> new Measure.Share(written.lowInBase(), basis);
      case MASS -> new Measure.Weight(written.lowInBase());
      case VOLUME -> new Measure.Capacity(written.lowInBase());
      case COUNT -> new Measure.Count(written.low());
      default -> {
        body.report(
            figure.span(), "`" + unit.symbol() + "` measures no amount; use %, g, kg, mL or each");
        yield new Measure.Unreadable();
      }
    };
  }

  private static String written(Atom.QuantityAtom figure) {
    return figure.number() + figure.unit().map(unit -> " " + unit.text()).orElse("");
  }

  private Optional<Located<String>> ingredient(List<Atom> atoms, Span figure, String shown) {
    Optional<Located<String>> name = Optional.empty();
    for (Atom atom : atoms) {
      if (atom instanceof Atom.NameAtom word) {
        if (name.isPresent()) {
          reportTwoNames(name.get(), word);
          return Optional.of(new Located<>(word.text(), word.span()));
        }
        name = Optional.of(new Located<>(word.text(), word.span()));
      } else if (!(atom instanceof Atom.TextAtom) && !(atom instanceof Atom.StrayAtom)) {
        body.report(atom.span(), "an amount is one figure, its unit, and one name");
      }
    }
    if (name.isEmpty()) {
      body.report(figure, "the amount " + shown + " names no ingredient");
    }
    return name;
  }

  private void reportTwoNames(Located<String> first, Atom.NameAtom second) {
    Optional<Unit> unit = Unit.overlookingCase(first.value());
    if (unit.isPresent()) {
      body.report(
          first.span(),
          "the unit " + Excerpt.of(first.value()) + " is written `" + unit.get().symbol() + "`");
    } else {
      body.report(
          first.span(),
          Excerpt.of(first.value())
              + " is no unit, and a line holds one name; is "
              + Excerpt.of(first.value() + "-" + second.text())
              + " meant?");
    }
  }

  private static Located<Basis> basis(Atom.NameAtom name) {
    return new Located<>(Basis.of(new Located<>(name.text(), name.span())), name.span());
  }

  private static Optional<Located<Temperature>> temperature(List<Clause> clauses) {
    return clauses.stream()
        .filter(clause -> clause.word() == Connective.AT)
        .flatMap(clause -> atomsOf(clause).stream())
        .flatMap(atom ->
            atom instanceof Atom.QuantityAtom figure && figure.measures(Unit.Dimension.TEMPERATURE)
                ? figure.quantity().map(q -> celsius(q, figure.span())).stream()
                : Stream.empty())
        .findFirst();
  }

  private static Located<Temperature> celsius(Quantity quantity, Span span) {
    return new Located<>(Temperature.ofCelsius(quantity.middleInBase().doubleValue()), span);
  }

  private static List<Atom> atomsOf(Clause clause) {
    return clause.groups().stream().flatMap(group -> group.atoms().stream()).toList();
  }
}
