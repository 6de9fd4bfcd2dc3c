package dev.kettlemark.model;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Which names of materials a declaration speaks of. */
public final class Mentions {

  private Mentions() {}

  /** The names a declaration uses as materials or as its parent, as written. */
  public static List<Located<String>> used(Declaration declaration) {
    if (declaration instanceof Formula formula) {
      return formula.amounts().stream().map(AmountLine::ingredient).toList();
    }
    if (declaration instanceof Variant variant) {
      Stream<Located<String>> changed = variant.changes().stream().flatMap(change -> {
        if (change instanceof VariantChange.Replace replace) {
          return Stream.of(replace.replacement().ingredient());
        }
        return change instanceof VariantChange.Add add
            ? Stream.of(add.line().ingredient())
            : Stream.empty();
      });
      Stream<Located<String>> weighed = variant.stages().stream()
          .flatMap(stage -> stage.amounts().stream())
          .map(AmountLine::ingredient);
      return Stream.of(variant.parent().stream(), changed, weighed)
          .flatMap(s -> s)
          .toList();
    }
    return List.of();
  }

  /** Every word by which a declaration speaks of a material, in whatever line. */
  public static Set<String> of(Declaration declaration) {
    Set<String> words = new HashSet<>();
    used(declaration).forEach(name -> words.add(name.value()));
    statements(declaration)
        .forEach(statement -> statement.names().forEach(name -> words.add(name.value())));
    return Collections.unmodifiableSet(words);
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
}
