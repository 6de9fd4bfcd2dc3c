package dev.kettlemark.features;

import dev.kettlemark.model.BasisDefinition;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hipparchus.fraction.BigFraction;

/**
 * Selected amounts and the steps that work on them alone, as a stage of their own.
 *
 * <p>The stage they stood in takes all of the new one, and its other steps speak of that.
 */
final class ExtractStageRefactoring {

  private static final String TITLE = "Make a stage of the selected lines";
  private static final String TAKE = "  all of              %s";

  private final RefactoringSite site;
  private final Formula formula;
  private final StageEditing stages;

  private ExtractStageRefactoring(RefactoringSite site, Formula formula) {
    this.site = site;
    this.formula = formula;
    this.stages = new StageEditing(site, formula);
  }

  static List<Refactoring> at(RefactoringSite site) {
    return site.hasSelection() && !site.amounts().isEmpty()
        ? site
            .formula()
            .flatMap(formula -> new ExtractStageRefactoring(site, formula).offered())
            .stream()
            .toList()
        : List.of();
  }

  private Optional<Refactoring> offered() {
    List<Integer> selected = site.amounts();
    Set<Integer> in =
        selected.stream().map(i -> site.lineAmount(i).stage()).collect(Collectors.toSet());
    Optional<Integer> first = stages.stageAt(site.lines().start());
    if (in.size() != 1 || !first.equals(stages.stageAt(site.lines().end()))) {
      return Optional.of(refused("the selected amounts stand in more than one stage"));
    }
    int index = in.iterator().next();
    Optional<String> bound = stages.inherited();
    return bound.isPresent()
        ? bound.map(ExtractStageRefactoring::refused)
        : extracted(index, selected);
  }

  private static Refactoring refused(String why) {
    return Refactoring.refused(TITLE, Refactoring.Kind.EXTRACT, why);
  }

  private Optional<Refactoring> extracted(int index, List<Integer> selected) {
    Stage stage = formula.stages().get(index);
    Set<String> moved =
        selected.stream().map(i -> site.line(i).ingredient().value()).collect(Collectors.toSet());
    boolean isSplit = stage.amounts().stream()
        .anyMatch(
            line -> moved.contains(line.ingredient().value()) && !site.isSelected(line.span()));
    List<Statement> steps = steps(stage, moved);
    if (isSplit || (selected.size() == stage.amounts().size() && stage.takes().isEmpty())) {
      return Optional.of(refused(
          isSplit
              ? "another line of the stage weighs the same material"
              : "nothing but these lines is weighed into the stage"));
    }
    if (steps.isEmpty()) {
      return Optional.of(refused("no step works on the selected amounts alone"));
    }
    Optional<String> idle = moved.stream()
        .filter(one -> steps.stream().noneMatch(step -> StageEditing.names(step).contains(one)))
        .sorted()
        .findFirst();
    if (idle.isPresent()) {
      return Optional.of(refused("no step that goes along works on `" + idle.get() + "`"));
    }
    String name = stages.freeName(stage.name().value() + "-part");
    BigFraction share = selected.stream()
        .map(i -> site.lineAmount(i).share().orElse(BigFraction.ZERO))
        .reduce(BigFraction.ZERO, BigFraction::add);
    List<TextEdit> edits = edits(index, moved, steps, name);
    Rewriting rewriting = site.rewriting(edits);
    return site.after(rewriting)
        .filter(after -> KeptGrams.everyMaterial(site.computed(), after))
        .map(after -> Refactoring.of(
            ActionTitle.of(TITLE, ": " + name, ", " + Display.percent(share) + " of the charge"),
            Refactoring.Kind.EXTRACT,
            site.document().uri(),
            rewriting.edits()))
        .or(() -> Optional.of(refused("the formula would make something else")));
  }

  /** The selected steps, or else those with which the stage begins; they speak of nothing else. */
  private List<Statement> steps(Stage stage, Set<String> moved) {
    List<Statement> selected =
        stage.steps().stream().filter(step -> site.isSelected(step.span())).toList();
    if (!selected.isEmpty()) {
      return selected.stream().allMatch(step -> isOf(stage, moved, step)) ? selected : List.of();
    }
    return stage.steps().stream().takeWhile(step -> isOf(stage, moved, step)).toList();
  }

  private static boolean isOf(Stage stage, Set<String> moved, Statement step) {
    Set<String> named = StageEditing.names(step);
    Set<String> others = new HashSet<>(StageEditing.contents(stage));
    others.removeAll(moved);
    return named.stream().anyMatch(moved::contains) && named.stream().noneMatch(others::contains);
  }

  private List<TextEdit> edits(int index, Set<String> moved, List<Statement> steps, String name) {
    Stage stage = formula.stages().get(index);
    List<TextEdit> edits = new ArrayList<>();
    StringBuilder weighed = new StringBuilder();
    StringBuilder done = new StringBuilder();
    int take = site.nextLine(stage.span().end());
    for (Span line : stages.lines(index)) {
      Optional<Line> written = stages.on(line);
      boolean goes = written
          .map(Line::span)
          .filter(span -> stage.amounts().stream()
                  .anyMatch(amount -> amount.span().equals(span)
                      && moved.contains(amount.ingredient().value()))
              || steps.stream().anyMatch(step -> step.span().equals(span)))
          .isPresent();
      if (goes) {
        (written.filter(StageEditing::isWeighed).isPresent() ? weighed : done)
            .append(stages.text(line));
        edits.add(TextEdit.delete(line));
      } else if (written.filter(StageEditing::isWeighed).isPresent()) {
        take = line.end();
      }
    }
    stage.steps().stream()
        .filter(step -> !steps.contains(step))
        .flatMap(step ->
            StageEditing.renamed(step, old -> List.of(moved.contains(old) ? name : old)).stream())
        .forEach(edits::add);
    members(stage, moved, name).forEach(edits::add);
    String lineBreak = site.lineBreak();
    edits.add(0, TextEdit.insert(take, TAKE.formatted(name) + lineBreak));
    edits.add(
        0,
        TextEdit.insert(
            stages.above(index), "stage " + name + lineBreak + weighed + done + lineBreak));
    return edits;
  }

  /** A basis that counts a moved line in its old stage counts it in the new one. */
  private List<TextEdit> members(Stage stage, Set<String> moved, String name) {
    return formula.bases().stream()
        .map(BasisDefinition::members)
        .flatMap(List::stream)
        .filter(member -> moved.contains(member.ingredient().value()))
        .flatMap(member -> member.stage().stream())
        .filter(in -> in.value().equals(stage.name().value()))
        .map(Located::span)
        .map(span -> new TextEdit(span, name))
        .toList();
  }
}
