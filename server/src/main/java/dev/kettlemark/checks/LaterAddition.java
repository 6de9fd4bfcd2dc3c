package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Verb;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A fix that weighs something in later, once the mass that it would harm or that harms it is done. */
final class LaterAddition {

  private static final Set<Verb.Effect> BOILING = Set.of(Verb.Effect.COOK, Verb.Effect.BOIL);

  private final Subject subject;
  private final Formula formula;
  private final WrittenLines lines;

  private LaterAddition(Subject subject, Formula formula) {
    this.subject = subject;
    this.formula = formula;
    this.lines = WrittenLines.of(subject);
  }

  /**
   * Moves an amount to the next stage that boils nothing, or to a new one at the end.
   *
   * @param stage where the amount stands
   * @param verb {@code fold} or {@code mix}, how it goes in
   */
  static Optional<Fix> of(
      Subject subject, ComputedFormula computed, AmountLine line, Stage stage, String verb) {
    return subject
        .writtenFormula()
        .filter(formula -> formula.stages().contains(stage))
        .filter(formula -> formula.bases().stream()
            .flatMap(basis -> basis.members().stream())
            .noneMatch(
                member -> member.ingredient().value().equals(line.ingredient().value())))
        .flatMap(formula -> new LaterAddition(subject, computed.formula()).move(line, stage, verb));
  }

  /** Takes an amount and its name out of a stage; empty where something goes into it. */
  static Optional<List<TextEdit>> gone(
      Subject subject, ComputedFormula computed, AmountLine line, Stage stage) {
    return new LaterAddition(subject, computed.formula()).gone(line, stage);
  }

  private Optional<List<TextEdit>> gone(AmountLine line, Stage stage) {
    return without(line, stage).map(steps -> {
      List<TextEdit> edits = new ArrayList<>(steps);
      edits.add(lines.without(line.span()));
      return edits;
    });
  }

  private Optional<Fix> move(AmountLine line, Stage from, String verb) {
    Optional<List<TextEdit>> taken = gone(line, from);
    if (taken.isEmpty()) {
      return Optional.empty();
    }
    List<TextEdit> edits = new ArrayList<>(taken.get());
    String amount = "  " + line.span().of(subject.text()).strip();
    String name = line.ingredient().value();
    Stage mass = from;
    for (Stage stage : formula.stages()) {
      if (takes(stage, mass)) {
        if (!boils(stage)) {
          edits.addAll(into(stage, mass, amount, verb, name));
          return Optional.of(new Fix("Add it in `" + stage.name().value() + "` instead", edits));
        }
        mass = stage;
      }
    }
    boolean isLast = formula.stages().get(formula.stages().size() - 1).equals(mass);
    return isLast ? Optional.of(atTheEnd(mass, amount, verb, name, edits)) : Optional.empty();
  }

  private Fix atTheEnd(Stage last, String amount, String verb, String name, List<TextEdit> edits) {
    String made = last.name().value();
    String stage = "finish";
    while (formula.stage(stage).isPresent()) {
      stage += "-too";
    }
    edits.add(lines.behindSection("stage " + stage + "\n" + amount + "\n"
        + WrittenLines.amount("all of", made) + "\n"
        + WrittenLines.step(verb, name + " into " + made)));
    return new Fix("Add it at the end, in a stage of its own", edits);
  }

  /** Weighs it in above what the stage takes, and works it in before the mass is shaped. */
  private List<TextEdit> into(Stage stage, Stage mass, String amount, String verb, String name) {
    List<TextEdit> edits = new ArrayList<>();
    String step = WrittenLines.step(verb, name + " into " + mass.name().value());
    edits.add(lines.above(stage.takes().get(0).span(), amount));
    edits.add(stage.steps().stream()
        .filter(LaterAddition::finishes)
        .findFirst()
        .map(shaping -> lines.above(shaping.span(), step))
        .or(() -> lines.behindSteps(stage, step))
        .orElseThrow());
    return edits;
  }

  private static boolean finishes(Statement step) {
    Verb.Effect effect = effect(step);
    return effect == Verb.Effect.SHAPE || effect == Verb.Effect.WAIT || step.is("keep");
  }

  private static boolean takes(Stage stage, Stage from) {
    return stage.takes().stream()
        .anyMatch(take -> take.stage().value().equals(from.name().value()));
  }

  private static boolean boils(Stage stage) {
    return stage.steps().stream().anyMatch(step -> BOILING.contains(effect(step)));
  }

  private static Verb.Effect effect(Statement step) {
    return Verb.of(step.word().value()).map(Verb::effect).orElse(Verb.Effect.NONE);
  }

  /** Takes a name out of all steps of a stage; empty where something goes into it. */
  private Optional<List<TextEdit>> without(AmountLine line, Stage stage) {
    String name = line.ingredient().value();
    List<TextEdit> edits = new ArrayList<>();
    for (Statement step : stage.steps()) {
      boolean isPlace =
          step.names(Connective.INTO).stream().anyMatch(n -> n.value().equals(name))
              || step.names(Connective.IN).stream().anyMatch(n -> n.value().equals(name))
              || step.names(Connective.WITH).stream().anyMatch(n -> n.value().equals(name));
      List<Located<String>> objects = step.objectNames();
      int index = objects.stream().map(Located::value).toList().indexOf(name);
      if (isPlace) {
        return Optional.empty();
      }
      if (index >= 0) {
        edits.add(
            objects.size() == 1
                ? lines.without(step.span())
                : TextEdit.delete(cut(objects, index)));
      }
    }
    return Optional.of(edits);
  }

  /** One name of a list with the comma that belongs to it. */
  private static Span cut(List<Located<String>> names, int index) {
    return index == 0
        ? new Span(names.get(0).span().start(), names.get(1).span().start())
        : new Span(names.get(index - 1).span().end(), names.get(index).span().end());
  }
}
