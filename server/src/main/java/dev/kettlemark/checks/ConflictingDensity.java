package dev.kettlemark.checks;

import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.library.Origin;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import java.util.List;
import java.util.Optional;

/**
 * Reports a density without a source that differs from the one of the built-in pantry.
 *
 * <p>A house may well buy another grade; then the figure has a source, its specification.
 */
public final class ConflictingDensity implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "conflicting-density", "a density without a source differs from the pantry's");

  /** Powders settle by so much on the way; common practice, no source. */
  private static final double MOST = 0.10;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return OwnIngredient.of(subject)
        .flatMap(own -> density(own)
            .filter(fact -> fact.text().isEmpty())
            .flatMap(fact -> builtIn(subject, own).flatMap(entry -> check(subject, fact, entry))))
        .stream()
        .toList();
  }

  private static Optional<Entry> builtIn(Subject subject, Ingredient own) {
    return subject.ask(Lookup.all(Kind.MATERIAL, own.name().value())).stream()
        .filter(entry -> entry.uri().startsWith(Pantry.SCHEME))
        .findFirst();
  }

  private static Optional<Finding> check(Subject subject, Statement fact, Entry builtIn) {
    Optional<Statement> other = builtIn
        .declaration()
        .flatMap(d -> d instanceof Ingredient pantry ? density(pantry) : Optional.empty())
        .filter(statement -> isBulk(statement) == isBulk(fact));
    return other.flatMap(statement -> figure(fact)
        .flatMap(here -> figure(statement)
            .filter(there -> isFar(value(here), value(there)))
            .map(there -> finding(subject, here, there, builtIn.origin(statement.span())))));
  }

  private static Finding finding(
      Subject subject, Located<Quantity> here, Located<Quantity> there, Origin origin) {
    String pantry = Display.trimmed(value(there), 3) + " g/mL";
    return INFO.at(
            here.span(),
            "%s here, %s in the built-in pantry",
            here.span().of(subject.text()),
            pantry)
        .because(
            "sheets with spoons and cups differ by the same factor; a figure of the house's own"
                + " names its source")
        .withRelated(origin, "the pantry's figure")
        .withFix(Fix.replace("Write `" + pantry + "`", here.span(), pantry));
  }

  private static Optional<Statement> density(Ingredient ingredient) {
    return ingredient.facts().first("density");
  }

  private static Optional<Located<Quantity>> figure(Statement fact) {
    return fact.objectFigure(Unit.Dimension.DENSITY);
  }

  private static double value(Located<Quantity> figure) {
    return figure.value().middleInBase().doubleValue();
  }

  private static boolean isBulk(Statement fact) {
    return fact.objectNames().stream().anyMatch(name -> name.value().equals("bulk"));
  }

  private static boolean isFar(double here, double there) {
    return there > 0 && Math.abs(here - there) / there > MOST;
  }
}
