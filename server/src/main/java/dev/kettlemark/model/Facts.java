package dev.kettlemark.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/** The facts of a section, in the order they were written. */
public record Facts(List<Statement> statements) {

  public Facts {
    statements = List.copyOf(statements);
  }

  /** The facts of what can be made and sold; empty for all other declarations. */
  public static Optional<Facts> of(Declaration declaration) {
    if (declaration instanceof Formula formula) {
      return Optional.of(formula.facts());
    }
    if (declaration instanceof Variant variant) {
      return Optional.of(variant.facts());
    }
    return declaration instanceof Product product ? Optional.of(product.facts()) : Optional.empty();
  }

  public Optional<Statement> first(String word) {
    for (Statement statement : statements) {
      if (statement.is(word)) {
        return Optional.of(statement);
      }
    }
    return Optional.empty();
  }

  public Stream<Statement> all(String word) {
    return statements.stream().filter(statement -> statement.is(word));
  }

  /** The first plain word behind the first fact of that name, such as {@code bench} of {@code status bench}. */
  public Optional<Located<String>> wordOf(String word) {
    return first(word).flatMap(Statement::objectName);
  }

  /** Every plain word behind every fact of that name, such as all claims. */
  public List<Located<String>> wordsOf(String word) {
    List<Located<String>> words = new ArrayList<>();
    for (Statement statement : statements) {
      if (statement.is(word)) {
        words.addAll(statement.objectNames());
      }
    }
    return Collections.unmodifiableList(words);
  }

  /** Whether some fact of that name has that plain word. */
  public boolean says(String word, String value) {
    for (Statement statement : statements) {
      if (statement.is(word) && statement.isOf(value)) {
        return true;
      }
    }
    return false;
  }

  /** What {@code percent of …} names. */
  public Optional<Located<Basis>> percentBasis() {
    return first("percent")
        .flatMap(fact -> fact.names(Connective.OF).stream()
            .findFirst()
            .map(name -> new Located<>(Basis.of(name), name.span())));
  }

  /** The weight that {@code batch …} gives, in grams. */
  public Optional<Located<BigFraction>> batch() {
    return first("batch")
        .flatMap(fact -> fact.objectFigure(Unit.Dimension.MASS))
        .map(figure -> figure.map(Quantity::middleInBase));
  }
}
