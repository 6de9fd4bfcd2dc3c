package dev.kettlemark.checks;

import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.ResolvedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Variant;
import dev.kettlemark.model.VariantChange;
import dev.kettlemark.reading.Suggestions;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reports a change of a variant that finds nothing to change in its parent.
 *
 * <p>The parent was edited, or the name is misspelt; the variant then silently stays like its parent.
 */
public final class ChangeWithoutTarget implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("change-without-target", "a variant changes what its parent does not have");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Optional<Located<String>> parent = subject.variant().flatMap(Variant::parent);
    if (parent.isEmpty()) {
      return List.of();
    }
    Optional<Declaration> declaration = subject.material(parent.get().value());
    if (declaration.isEmpty() || declaration.get() instanceof Ingredient) {
      return List.of(noParent(subject, parent.get(), declaration.isPresent()));
    }
    Optional<Formula> formula =
        subject.ask(Formulas.resolved(parent.get().value())).map(ResolvedFormula::formula);
    return subject.formula().stream()
        .flatMap(computed -> computed.resolved().missed().stream())
        .flatMap(change -> formula.stream()
            .map(of -> OtherPlace.heading(
                finding(change, of).withFix(removed(subject, change)),
                subject,
                parent.get().value(),
                "the parent")))
        .toList();
  }

  private static Finding noParent(Subject subject, Located<String> parent, boolean isIngredient) {
    List<String> near = Suggestions.near(parent.value(), subject.materialNames()).stream()
        .filter(name -> subject
            .material(name)
            .filter(found -> !(found instanceof Ingredient))
            .isPresent())
        .filter(name ->
            !name.equals(subject.entry().declaration().orElseThrow().name().value()))
        .toList();
    Finding finding = isIngredient
        ? INFO.at(parent.span(), "`%s` is an ingredient, not a formula", parent.value())
        : INFO.at(
            parent.span(),
            "`%s` is described nowhere%s",
            parent.value(),
            Suggestions.sentence(parent.value(), near));
    return finding
        .because("a variant is nothing without the formula it changes")
        .withFixes(renames(parent, near));
  }

  private static Finding finding(VariantChange change, Formula parent) {
    Optional<Located<String>> where = stage(change);
    if (where.filter(stage -> parent.stage(stage.value()).isEmpty()).isPresent()) {
      return missing(
          where.get(),
          "stage `" + where.get().value() + "`",
          parent.stages().stream().map(Stage::name).map(Located::value).toList());
    }
    if (change instanceof VariantChange.Withdraw withdraw) {
      return withdrawn(withdraw, parent);
    }
    Located<String> target = target(change);
    String place = where.map(stage -> " in `" + stage.value() + "`").orElse("");
    List<String> lines = parent.stages().stream()
        .filter(
            stage -> where.filter(w -> !w.value().equals(stage.name().value())).isEmpty())
        .flatMap(stage -> stage.amounts().stream())
        .map(AmountLine::ingredient)
        .map(Located::value)
        .toList();
    return missing(target, "`" + target.value() + "`" + place, lines);
  }

  private static Finding withdrawn(VariantChange.Withdraw withdraw, Formula parent) {
    Located<String> fact = withdraw.fact();
    List<String> words =
        parent.facts().wordsOf(fact.value()).stream().map(Located::value).toList();
    if (withdraw.word().isEmpty() || words.isEmpty()) {
      return missing(
          fact,
          "fact `" + fact.value() + "`",
          parent.facts().statements().stream()
              .map(f -> f.word().value())
              .distinct()
              .toList());
    }
    Located<String> word = withdraw.word().get();
    return missing(word, "`" + fact.value() + " " + word.value() + "`", words);
  }

  private static Finding missing(Located<String> target, String what, Collection<String> known) {
    List<String> distinct = known.stream().distinct().toList();
    List<String> near = Suggestions.near(target.value(), distinct);
    return INFO.at(
            target.span(),
            "the parent has no %s%s",
            what,
            Suggestions.sentence(target.value(), distinct))
        .because("the change falls off, and the variant stays like its parent")
        .withFixes(renames(target, near));
  }

  /** Without the line the variant is what it is now. */
  private static Fix removed(Subject subject, VariantChange change) {
    return new Fix("Remove the change", List.of(WrittenLines.of(subject).without(change.span())));
  }

  private static List<Fix> renames(Located<String> name, List<String> near) {
    return near.stream()
        .map(word -> Fix.replace("Write `" + word + "`", name.span(), word))
        .toList();
  }

  private static Located<String> target(VariantChange change) {
    if (change instanceof VariantChange.Replace replace) {
      return replace.old();
    }
    if (change instanceof VariantChange.Drop drop) {
      return drop.old();
    }
    return change instanceof VariantChange.Add add
        ? add.line().ingredient()
        : ((VariantChange.Change) change).line().ingredient();
  }

  private static Optional<Located<String>> stage(VariantChange change) {
    return Stream.of(change)
        .flatMap(c -> {
          if (c instanceof VariantChange.Replace replace) {
            return replace.stage().stream();
          }
          if (c instanceof VariantChange.Drop drop) {
            return drop.stage().stream();
          }
          if (c instanceof VariantChange.Add add) {
            return add.stage().stream();
          }
          return c instanceof VariantChange.Change other ? other.stage().stream() : Stream.empty();
        })
        .findFirst();
  }
}
