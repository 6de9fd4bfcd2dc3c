package dev.kettlemark.checks;

import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.Trials;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Sheet;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Trial;
import dev.kettlemark.reading.Suggestions;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Reports a trial or a sheet that speaks of something which the library does not have.
 *
 * <p>Nothing of it can be held against anything: a renamed formula loses its evidence without a word.
 */
public final class UnknownSubject implements Rule {

  private static final RuleInfo INFO = RuleInfo.error(
      "unknown-subject", "a trial or a sheet speaks of something that does not exist");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Optional<Trial> trial = Trials.trial(subject.entry());
    if (trial.isPresent()) {
      return ofTrial(subject, trial.get());
    }
    return subject.declaration().stream()
        .flatMap(d -> d instanceof Sheet sheet ? Stream.of(sheet) : Stream.empty())
        .flatMap(sheet -> sheet.subject().stream())
        .flatMap(name -> shown(subject, name).stream())
        .toList();
  }

  private static List<Finding> ofTrial(Subject subject, Trial trial) {
    List<Finding> findings = new ArrayList<>();
    trial.formula().flatMap(name -> made(subject, name)).ifPresent(findings::add);
    trial.house().flatMap(name -> house(subject, name)).ifPresent(findings::add);
    trial
        .formula()
        .flatMap(name -> subject.ask(Formulas.resolved(name.value())))
        .ifPresent(resolved -> stages(trial, resolved.formula()).forEach(findings::add));
    return findings;
  }

  private static Optional<Finding> made(Subject subject, Located<String> name) {
    boolean isFormula = subject
        .material(name.value())
        .filter(found -> !(found instanceof Ingredient))
        .isPresent();
    return isFormula
        ? Optional.empty()
        : Optional.of(unknown(
            name,
            "the library has no formula",
            formulas(subject),
            "what was measured counts for nothing"));
  }

  private static Optional<Finding> shown(Subject subject, Located<String> name) {
    boolean isKnown = subject
            .material(name.value())
            .filter(found -> !(found instanceof Ingredient))
            .isPresent()
        || subject.ask(Lookup.of(Kind.PRODUCT, name.value())).isPresent();
    if (isKnown) {
      return Optional.empty();
    }
    TreeSet<String> names = new TreeSet<>(formulas(subject));
    names.addAll(subject.ask(Lookup.names(Kind.PRODUCT)));
    return Optional.of(unknown(
        name, "the library has no formula or product", names, "the sheet has nothing to show"));
  }

  private static Optional<Finding> house(Subject subject, Located<String> name) {
    return subject.ask(Lookup.of(Kind.HOUSE, name.value())).isPresent()
        ? Optional.empty()
        : Optional.of(unknown(
                name,
                "the library has no house",
                subject.ask(Lookup.names(Kind.HOUSE)),
                "its altitude and its scales are not known")
            .as(Severity.WARNING));
  }

  /** Ingredients are left out, since nobody makes a trial of one. */
  private static Collection<String> formulas(Subject subject) {
    return subject.materialNames().stream()
        .filter(name -> subject
            .material(name)
            .filter(found -> !(found instanceof Ingredient))
            .isPresent())
        .toList();
  }

  /** What a measurement is of: a stage, or something that is weighed in or made. */
  private static Stream<Finding> stages(Trial trial, Formula formula) {
    List<String> stages =
        formula.stages().stream().map(Stage::name).map(Located::value).toList();
    return trial
        .facts()
        .all("measured")
        .flatMap(line -> line.names(Connective.OF).stream())
        .filter(name -> !stages.contains(name.value()))
        .filter(name -> !name.value().equals(formula.name().value()))
        .filter(name -> formula.amounts().stream()
            .noneMatch(line -> line.ingredient().value().equals(name.value())))
        .map(name -> unknown(
                name,
                "`" + formula.name().value() + "` has no stage",
                stages,
                "what was measured there is held against nothing")
            .as(Severity.WARNING));
  }

  private static Finding unknown(
      Located<String> name, String lacks, Collection<String> known, String why) {
    return INFO.at(
            name.span(),
            "%s `%s`%s",
            lacks,
            name.value(),
            Suggestions.sentence(name.value(), known))
        .because(why)
        .withFixes(Suggestions.near(name.value(), known).stream()
            .map(near -> Fix.replace("Write `" + near + "`", name.span(), near))
            .toList());
  }
}
