package dev.kettlemark.reading;

import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.VariantChange;
import dev.kettlemark.syntax.Atom;
import dev.kettlemark.syntax.Clause;
import dev.kettlemark.syntax.Group;
import dev.kettlemark.syntax.Line;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads the changes of a variant. */
final class ChangeReader {

  private final Body body;
  private final AmountReader amounts;

  ChangeReader(Body body, AmountReader amounts) {
    this.body = body;
    this.amounts = amounts;
  }

  Optional<VariantChange> read(Line.StatementLine line) {
    return switch (line.head().text()) {
      case "replace" -> replace(line);
      case "drop" -> named(line).map(old -> new VariantChange.Drop(old, stage(line), line.span()));
      case "add" ->
        amount(line, line.objects(), line.clauses())
            .map(amount -> new VariantChange.Add(amount, stage(line), line.span()));
      case "change" ->
        amount(line, line.objects(), line.clauses())
            .map(amount -> new VariantChange.Change(amount, stage(line), line.span()));
      default -> withdraw(line);
    };
  }

  private Optional<VariantChange> replace(Line.StatementLine line) {
    Optional<Clause> by =
        line.clauses().stream().filter(clause -> clause.word() == Connective.BY).findFirst();
    Optional<Located<String>> old = named(line);
    if (old.isEmpty() || by.isEmpty()) {
      body.report(line.span(), "a replacement reads `replace honey by 14.00 % date-syrup`");
      return Optional.empty();
    }
    List<Clause> rest = line.clauses()
        .subList(line.clauses().indexOf(by.get()) + 1, line.clauses().size());
    return amount(line, by.get().groups(), rest)
        .map(amount -> new VariantChange.Replace(old.get(), amount, stage(line), line.span()));
  }

  private Optional<VariantChange> withdraw(Line.StatementLine line) {
    List<Located<String>> names = names(line.objects());
    if (names.isEmpty()) {
      body.report(line.span(), "what is withdrawn is a fact, as in `withdraw claim vegan`");
      return Optional.empty();
    }
    Optional<Located<String>> word = names.stream().skip(1).findFirst();
    return Optional.of(new VariantChange.Withdraw(names.get(0), word, line.span()));
  }

  /** The amount that a change speaks of; the `in STAGE` clause is not part of it. */
  private Optional<AmountLine> amount(
      Line.StatementLine line, List<Group> objects, List<Clause> clauses) {
    if (objects.isEmpty() || !(objects.get(0).atoms().get(0) instanceof Atom.QuantityAtom figure)) {
      String example = line.clauses().stream().anyMatch(clause -> clause.word() == Connective.BY)
          ? "replace honey by 14.00 % date-syrup"
          : "add 0.30 % guar-gum in foam";
      body.report(line.span(), "this change needs an amount, as in `" + example + "`");
      return Optional.empty();
    }
    List<Group> behind = new ArrayList<>();
    List<Atom> first = objects.get(0).atoms();
    if (first.size() > 1) {
      behind.add(new Group(first.subList(1, first.size())));
    }
    behind.addAll(objects.subList(1, objects.size()));
    return amounts.read(figure, behind, clauses, line.span());
  }

  private Optional<Located<String>> named(Line.StatementLine line) {
    Optional<Located<String>> name = names(line.objects()).stream().findFirst();
    if (name.isEmpty()) {
      body.report(line.span(), "this change does not name what it changes");
    }
    return name;
  }

  private static Optional<Located<String>> stage(Line.StatementLine line) {
    return line.clauses().stream()
        .filter(clause -> clause.word() == Connective.IN)
        .flatMap(clause -> names(clause.groups()).stream())
        .findFirst();
  }

  private static List<Located<String>> names(List<Group> groups) {
    return groups.stream()
        .flatMap(group -> group.atoms().stream())
        .flatMap(atom -> atom instanceof Atom.NameAtom name
            ? Stream.of(new Located<>(name.text(), name.span()))
            : Stream.empty())
        .toList();
  }
}
