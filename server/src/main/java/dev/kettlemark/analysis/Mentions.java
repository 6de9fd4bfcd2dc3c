package dev.kettlemark.analysis;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Question;
import dev.kettlemark.library.Scope;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.library.Task;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Sheet;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Trial;
import dev.kettlemark.model.Variant;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which words a library speaks of its materials by, wherever it does. */
public enum Mentions {
  ;

  private static final Task<Set<String>> WORDS = Mentions::words;

  /** Whether any section of the user's speaks of a material, its own section apart. */
  public static Question<Boolean> of(String material) {
    return new Mentioned(material);
  }

  /** Whether the user's texts hold anything that could use a material. */
  public static Question<Boolean> anyFormula() {
    return new AnyFormula();
  }

  private record Mentioned(String material) implements Question<Boolean> {
    @Override
    public Boolean ask(Snapshot snapshot) {
      return own(snapshot).anyMatch(entry -> snapshot.result(WORDS, entry).contains(material));
    }
  }

  private record AnyFormula() implements Question<Boolean> {
    @Override
    public Boolean ask(Snapshot snapshot) {
      return own(snapshot)
          .anyMatch(
              entry -> entry.declaration().filter(Formula.class::isInstance).isPresent());
    }
  }

  private static Stream<Entry> own(Snapshot snapshot) {
    return snapshot.library().documents().stream()
        .filter(document -> !document.builtIn())
        .map(Document::entries)
        .flatMap(entries -> entries.stream());
  }

  private static Set<String> words(Entry entry, Scope scope) {
    return entry.declaration().map(Mentions::words).orElse(Set.of());
  }

  private static Set<String> words(Declaration declaration) {
    Stream<String> used = Uses.of(declaration).stream().map(Located::value);
    return Stream.concat(used, statements(declaration).flatMap(Mentions::names))
        .collect(Collectors.toUnmodifiableSet());
  }

  private static Stream<Statement> statements(Declaration declaration) {
    if (declaration instanceof Formula formula) {
      return Stream.concat(formula.facts().statements().stream(), formula.steps());
    }
    if (declaration instanceof Variant variant) {
      return Stream.concat(
          variant.facts().statements().stream(),
          variant.stages().stream().map(Stage::steps).flatMap(steps -> steps.stream()));
    }
    if (declaration instanceof Ingredient ingredient) {
      return ingredient.facts().all("stands-in-for");
    }
    if (declaration instanceof Trial trial) {
      return trial.facts().all("lot");
    }
    if (declaration instanceof Sheet sheet) {
      return sheet.facts().statements().stream();
    }
    return Facts.of(declaration).stream().flatMap(facts -> facts.statements().stream());
  }

  private static Stream<String> names(Statement statement) {
    return Stream.concat(
            statement.objects().stream(),
            statement.clauses().stream().flatMap(clause -> clause.operands().stream()))
        .flatMap(operand ->
            operand.value() instanceof Operand.Name name ? Stream.of(name.word()) : Stream.empty());
  }
}
