package dev.kettlemark.features;

import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.ResolvedFormula;
import dev.kettlemark.features.Proposal.Kind;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Sheet;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Trial;
import dev.kettlemark.model.Variant;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.syntax.Atom;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The names that a formula gives and uses; of a variant, its parent's too. */
final class FormulaNames {

  private final Optional<Formula> formula;

  private FormulaNames(Optional<Formula> formula) {
    this.formula = formula;
  }

  /** The names of the section's own formula, or of the one that a trial or a sheet is of. */
  static FormulaNames of(Snapshot snapshot, Entry entry) {
    Optional<Located<String>> other = entry.declaration().flatMap(FormulaNames::subject);
    return new FormulaNames(
        other.isPresent() ? named(snapshot, other.get()) : own(snapshot, entry));
  }

  /** The names of the formula that a variant changes. */
  static FormulaNames ofParent(Snapshot snapshot, Entry entry) {
    Optional<Declaration> declaration = entry.declaration();
    Optional<Located<String>> parent =
        declaration.isPresent() && declaration.get() instanceof Variant variant
            ? variant.parent()
            : Optional.empty();
    return new FormulaNames(parent.flatMap(name -> named(snapshot, name)));
  }

  private static Optional<Located<String>> subject(Declaration declaration) {
    if (declaration instanceof Trial trial) {
      return trial.formula();
    }
    return declaration instanceof Sheet sheet ? sheet.subject() : Optional.empty();
  }

  private static Optional<Formula> own(Snapshot snapshot, Entry entry) {
    return snapshot.result(Formulas.RESOLVED, entry).map(ResolvedFormula::formula);
  }

  private static Optional<Formula> named(Snapshot snapshot, Located<String> name) {
    return Formulas.resolved(name.value()).ask(snapshot).map(ResolvedFormula::formula);
  }

  /** Every stage, in order. */
  List<Offer> stages() {
    return formula.stream()
        .flatMap(f -> f.stages().stream())
        .map(FormulaNames::offer)
        .toList();
  }

  /** The stages above one, those that nothing has taken yet first. */
  List<Offer> stagesToTake(Optional<Line.SectionLine> heading) {
    String here = name(heading).orElse("");
    List<Stage> above = formula.stream()
        .flatMap(f -> f.stages().stream())
        .takeWhile(stage -> !stage.name().value().equals(here))
        .toList();
    List<String> taken = formula.stream()
        .flatMap(f -> f.stages().stream())
        .flatMap(stage -> stage.takes().stream())
        .map(take -> take.stage().value())
        .toList();
    return Stream.concat(
            above.stream().filter(stage -> !taken.contains(stage.name().value())),
            above.stream().filter(stage -> taken.contains(stage.name().value())))
        .map(FormulaNames::offer)
        .toList();
  }

  /** What a percentage may be of: charge and finished weight, bases, stages, ingredients. */
  List<Offer> bases() {
    List<Offer> offers = new ArrayList<>();
    offers.add(Offer.of("charge", Kind.BASIS, "all that is weighed in"));
    offers.add(Offer.of("finished", Kind.BASIS, "what the formula weighs when it is done"));
    formula.stream()
        .flatMap(f -> f.bases().stream())
        .forEach(basis ->
            offers.add(Offer.of(basis.name().value(), Kind.BASIS, "basis of this formula")));
    offers.addAll(stages());
    offers.addAll(ingredients());
    return offers;
  }

  /** Everything weighed in, each name once. */
  List<Offer> ingredients() {
    return formula.stream()
        .flatMap(f -> f.amounts().stream())
        .map(AmountLine::ingredient)
        .map(Located::value)
        .distinct()
        .map(name -> Offer.of(name, Kind.INGREDIENT, "weighed in this formula"))
        .toList();
  }

  /** As much as a line says of an ingredient, as far as it means the same on another line. */
  List<Offer> amountsOf(String ingredient) {
    return formula.stream()
        .flatMap(f -> f.amounts().stream())
        .filter(line -> line.ingredient().value().equals(ingredient))
        .filter(line -> !(line.measure().value() instanceof Measure.Share share)
            || share.basis().isEmpty())
        .flatMap(line -> line.written().filter(figure -> !figure.isRange()).stream())
        .flatMap(figure -> figure.unit().stream()
            .map(unit -> Display.fixed(figure.low(), figure.decimals()) + " " + unit.symbol()))
        .distinct()
        .map(amount -> Offer.of(amount, Kind.WORD, "as much as there is of " + ingredient))
        .toList();
  }

  /** What a stage weighs, in order. */
  Set<String> weighed(Optional<Line.SectionLine> heading) {
    Set<String> names = new LinkedHashSet<>();
    stage(heading).stream()
        .flatMap(stage -> stage.amounts().stream())
        .forEach(line -> names.add(line.ingredient().value()));
    return names;
  }

  /** What a stage weighs and takes, what no other step names first. */
  List<Offer> contents(Optional<Line.SectionLine> heading, Span line) {
    List<Offer> unused = new ArrayList<>();
    List<Offer> used = new ArrayList<>();
    Optional<Stage> stage = stage(heading);
    Set<String> named = new LinkedHashSet<>();
    stage.stream()
        .flatMap(s -> s.steps().stream())
        .filter(step -> !line.contains(step.span()))
        .flatMap(FormulaNames::namesOf)
        .forEach(named::add);
    for (String name : weighed(heading)) {
      boolean isUsed = named.contains(name);
      (isUsed ? used : unused)
          .add(Offer.of(name, Kind.INGREDIENT, isUsed ? "weighed in this stage" : "not used yet"));
    }
    stage.stream()
        .flatMap(s -> s.takes().stream())
        .map(take -> take.stage().value())
        .forEach(name -> {
          boolean isUsed = named.contains(name);
          (isUsed ? used : unused)
              .add(Offer.of(name, Kind.STAGE, isUsed ? "taken over" : "taken over, not used yet"));
        });
    unused.addAll(used);
    return unused;
  }

  private Optional<Stage> stage(Optional<Line.SectionLine> heading) {
    return name(heading).flatMap(name -> formula.flatMap(f -> f.stage(name)));
  }

  private static Stream<String> namesOf(Statement step) {
    return Stream.concat(
            step.objectNames().stream(),
            Arrays.stream(Connective.values()).flatMap(word -> step.names(word).stream()))
        .map(Located::value);
  }

  private static Optional<String> name(Optional<Line.SectionLine> heading) {
    return heading
        .filter(line -> !line.objects().isEmpty())
        .map(line -> line.objects().get(0).atoms().get(0))
        .flatMap(atom ->
            atom instanceof Atom.NameAtom name ? Optional.of(name.text()) : Optional.empty());
  }

  private static Offer offer(Stage stage) {
    return Offer.of(
        stage.name().value(), Kind.STAGE, stage.title().orElse("stage of this formula"));
  }
}
