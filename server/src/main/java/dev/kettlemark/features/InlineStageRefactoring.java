package dev.kettlemark.features;

import dev.kettlemark.analysis.Material;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.BasisDefinition;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/** A stage worked into the one that takes it; steps that named nothing name what they mean. */
final class InlineStageRefactoring {

  private final RefactoringSite site;
  private final Formula formula;
  private final StageEditing stages;
  private final int from;
  private final int into;

  private InlineStageRefactoring(
      RefactoringSite site, Formula formula, StageEditing stages, int from, int into) {
    this.site = site;
    this.formula = formula;
    this.stages = stages;
    this.from = from;
    this.into = into;
  }

  /** On the heading of a stage that one other takes all of. */
  static List<Refactoring> at(RefactoringSite site) {
    return site
        .formula()
        .flatMap(formula -> {
          StageEditing stages = new StageEditing(site, formula);
          return stages
              .headingAt()
              .flatMap(from -> stages
                  .taker(from)
                  .map(into ->
                      new InlineStageRefactoring(site, formula, stages, from, into).offered()));
        })
        .stream()
        .toList();
  }

  private Stage source() {
    return formula.stages().get(from);
  }

  private Stage target() {
    return formula.stages().get(into);
  }

  private String title() {
    return ActionTitle.of(
        "Work stage " + source().name().value() + " into " + target().name().value());
  }

  private Refactoring offered() {
    Optional<String> why = Stream.of(
            stages.inherited(),
            stages.spokenOf(source().name().value()),
            otherVessel(),
            shared(),
            basis(),
            spokenOfElsewhere())
        .flatMap(Optional::stream)
        .findFirst();
    return why.map(this::refused).orElseGet(this::written);
  }

  private Refactoring refused(String why) {
    return Refactoring.refused(title(), Refactoring.Kind.INLINE, why);
  }

  private Optional<String> otherVessel() {
    Optional<String> own = source().vessel().map(Located::value);
    return own.isEmpty() || own.equals(target().vessel().map(Located::value))
        ? Optional.empty()
        : Optional.of("it is made in another vessel");
  }

  private Optional<String> shared() {
    List<String> there = StageEditing.contents(target());
    return StageEditing.contents(source()).stream()
        .filter(there::contains)
        .findFirst()
        .map(name -> "both stages hold `" + name + "`, and a step could not tell them apart");
  }

  private Optional<String> basis() {
    String name = source().name().value();
    boolean isBasis = formula.amounts().stream()
            .anyMatch(line -> line.measure().value() instanceof Measure.Share share
                && formula.basisOf(share) instanceof Basis.Named named
                && named.name().value().equals(name))
        || formula.bases().stream()
            .flatMap(basis -> basis.members().stream())
            .anyMatch(member -> member.ingredient().value().equals(name));
    return isBasis ? Optional.of("an amount is a percentage of it") : Optional.empty();
  }

  private Optional<String> spokenOfElsewhere() {
    String name = source().name().value();
    return formula.stages().stream()
        .filter(stage -> !stage.equals(source()) && !stage.equals(target()))
        .filter(stage ->
            stage.steps().stream().anyMatch(step -> StageEditing.names(step).contains(name)))
        .findFirst()
        .map(stage -> "a step of `" + stage.name().value() + "` speaks of it");
  }

  private Refactoring written() {
    Rewriting rewriting = site.rewriting(edits());
    return site.after(rewriting)
        .filter(after -> KeptGrams.everyMaterial(site.computed(), after))
        .map(after -> Refactoring.of(
            title(), Refactoring.Kind.INLINE, site.document().uri(), rewriting.edits()))
        .orElseGet(() -> refused("the formula would make something else"));
  }

  private List<TextEdit> edits() {
    StringBuilder weighed = new StringBuilder();
    StringBuilder taken = new StringBuilder();
    StringBuilder done = new StringBuilder();
    List<TextEdit> explicit = explicit();
    for (Span line : stages.lines(from)) {
      Optional<Line> written = stages.on(line);
      StringBuilder goes = written.filter(Line.TakeLine.class::isInstance).isPresent()
          ? taken
          : written.filter(StageEditing::isWeighed).isPresent() ? weighed : done;
      if (written.isPresent() || !line.of(site.text()).isBlank()) {
        goes.append(stages.edited(line, explicit));
      }
    }
    List<TextEdit> edits = new ArrayList<>();
    edits.add(TextEdit.delete(stages.block(from)));
    edits.add(TextEdit.insert(site.nextLine(target().span().end()), weighed.toString()));
    Span take = wholeLine(target().takes().stream()
        .filter(one -> one.stage().value().equals(source().name().value()))
        .findFirst()
        .orElseThrow()
        .span());
    edits.add(new TextEdit(take, taken.toString()));
    edits.add(TextEdit.insert(firstStep(), done.toString()));
    String name = source().name().value();
    List<String> contents = masses();
    target()
        .steps()
        .forEach(step -> edits.addAll(
            StageEditing.renamed(step, old -> old.equals(name) ? contents : List.of(old))));
    formula.bases().stream()
        .map(BasisDefinition::members)
        .flatMap(List::stream)
        .flatMap(member -> member.stage().stream())
        .filter(in -> in.value().equals(name))
        .forEach(in -> edits.add(new TextEdit(in.span(), target().name().value())));
    return edits;
  }

  private Span wholeLine(Span line) {
    return new Span(site.lineStart(line.start()), site.nextLine(line.end()));
  }

  /** Where the target's steps begin, or else the end of what is weighed into it. */
  private int firstStep() {
    return target().steps().stream()
        .map(Statement::span)
        .min(Comparator.comparingInt(Span::start))
        .map(span -> site.lineStart(span.start()))
        .orElseGet(() -> {
          int end = site.nextLine(target().span().end());
          for (Span line : stages.lines(into)) {
            end = stages.on(line).filter(StageEditing::isWeighed).isPresent() ? line.end() : end;
          }
          return end;
        });
  }

  /** The names by which the target speaks of what the stage left: one where it is one mass. */
  private List<String> masses() {
    StageResult result = site.computed().process().stages().get(from);
    List<String> contents = StageEditing.contents(source());
    return result.parcels().size() == 1 ? List.of(main(contents)) : contents;
  }

  /** What a cook would call the mass by: what foams or sets it, or else the heaviest part. */
  private String main(List<String> contents) {
    return contents.stream()
        .filter(name -> site.computed()
            .material(name)
            .flatMap(Material::ingredient)
            .filter(one -> one.hasRole("whipping") || one.hasRole("gelling"))
            .isPresent())
        .findFirst()
        .or(() -> contents.stream().max(Comparator.comparingDouble(this::charged)))
        .orElse("");
  }

  private double charged(String name) {
    return source().takes().stream()
        .filter(take -> take.stage().value().equals(name))
        .flatMap(take -> site.computed().process().stage(name).stream()
            .map(stage -> stage.charged().grams() * take.share().doubleValue()))
        .findFirst()
        .orElseGet(() -> site.computed().amounts().lines().stream()
            .filter(line -> line.stage() == from)
            .filter(line -> line.line().ingredient().value().equals(name))
            .mapToDouble(line -> line.share().orElse(BigFraction.ZERO).doubleValue()
                * site.computed().process().charge().mass().grams())
            .sum());
  }

  /** Steps that name nothing act on all that the stage holds, and say so from now on. */
  private List<TextEdit> explicit() {
    List<TextEdit> edits = new ArrayList<>();
    List<String> contents = StageEditing.contents(source());
    List<StepResult> results = site.computed().process().stages().get(from).steps();
    for (Statement step : source().steps()) {
      if (step.objects().isEmpty() && !contents.isEmpty()) {
        boolean isOne = results.stream()
            .filter(result -> result.step().equals(step))
            .anyMatch(result -> result.before().size() == 1);
        edits.add(TextEdit.insert(
            step.word().span().end(),
            " " + (isOne ? main(contents) : String.join(", ", contents))));
      }
    }
    return edits;
  }
}
