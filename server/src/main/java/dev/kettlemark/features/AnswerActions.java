package dev.kettlemark.features;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Experiment.StepPlace;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.answers.AgentHeat;
import dev.kettlemark.answers.Answer;
import dev.kettlemark.answers.CookTemperature;
import dev.kettlemark.answers.GelatineExchange;
import dev.kettlemark.answers.Reach;
import dev.kettlemark.answers.Shelf;
import dev.kettlemark.answers.WhiteExchange;
import dev.kettlemark.features.ScaleActions.Proposal;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.science.Bloom;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Answers to what a line may be asked: how hot to cook, what to take instead, how an agent gets hot.
 *
 * <p>Only the line under the cursor is asked, since each answer runs the formula some ten times.
 */
public final class AnswerActions {

  /** More titles than this of one kind crowd a menu. */
  private static final int MOST_OF_A_KIND = 4;

  private final Snapshot snapshot;
  private final Entry entry;
  private final ComputedFormula formula;
  private final Shelf shelf;
  private final Span line;
  private final List<Proposal> proposals = new ArrayList<>();

  private AnswerActions(Snapshot snapshot, Entry entry, ComputedFormula formula, Span line) {
    this.snapshot = snapshot;
    this.entry = entry;
    this.formula = formula;
    this.shelf = new Shelf(snapshot);
    this.line = line;
  }

  /** The answers for the line that a range starts on; none outside formulas and variants. */
  public static List<Proposal> at(Snapshot snapshot, Document document, Span range) {
    Entry entry = document.entryAt(range.start());
    Span line = document
        .text()
        .source()
        .line(document.text().source().lineAt(range.start()))
        .shiftedBy(-entry.placed().offset());
    return Formulas.computed(snapshot, entry)
        .map(formula -> new AnswerActions(snapshot, entry, formula, line).all())
        .orElse(List.of());
  }

  private List<Proposal> all() {
    cooks();
    List<LineAmount> lines = formula.amounts().lines();
    for (int i = 0; i < lines.size(); i++) {
      if (isHere(lines.get(i).line().span())) {
        Optional<Ingredient> ingredient = formula
            .material(lines.get(i).line().ingredient().value())
            .flatMap(Material::ingredient);
        int index = i;
        ingredient.ifPresent(one -> amount(index, one));
      }
    }
    meetings();
    return List.copyOf(proposals);
  }

  private void cooks() {
    new CookQuestions(formula)
        .at(this::isHere)
        .forEach(
            question -> question.answer().ifKnown(answer -> propose(answer, question.title())));
  }

  private void amount(int index, Ingredient ingredient) {
    Shelf.bloom(ingredient).ifPresent(bloom -> gelatines(index, bloom));
    if (Shelf.isEggWhite(ingredient)) {
      shelf.eggWhites(!Shelf.isDried(ingredient)).stream()
          .limit(MOST_OF_A_KIND)
          .forEach(other ->
              propose(WhiteExchange.of(formula, shelf, index, other, WhiteExchange.Equal.PROTEIN)));
      shelf.standIns(ingredient.name().value()).stream()
          .filter(standIn -> standIn
              .material()
              .ingredient()
              .filter(i -> i.facts().says("suits", "vegan"))
              .isPresent())
          .limit(MOST_OF_A_KIND)
          .forEach(standIn -> propose(WhiteExchange.of(formula, shelf, index, standIn)));
    }
    DoctorQuestion.of(formula, shelf, index).ifPresent(this::propose);
    if (AgentHeat.agents(formula).contains(ingredient.name().value())) {
      ways(ingredient.name().value());
    }
  }

  private void gelatines(int index, Bloom bloom) {
    shelf.gelatines().stream()
        .filter(other -> other
            .ingredient()
            .flatMap(Shelf::bloom)
            .filter(strength -> strength.grams() != bloom.grams())
            .isPresent())
        .limit(MOST_OF_A_KIND)
        .forEach(other ->
            propose(GelatineExchange.of(formula, index, other, GelatineExchange.Rule.ROOT)));
  }

  /** On the step where the hot mass meets an agent that does not get hot enough. */
  private void meetings() {
    for (String agent : AgentHeat.agents(formula)) {
      boolean meetsHere = AgentHeat.of(formula, agent)
          .toOptional()
          .flatMap(AgentHeat::meeting)
          .map(AgentHeat.Seen::place)
          .filter(place -> isHere(step(place)))
          .isPresent();
      if (meetsHere) {
        ways(agent);
      }
    }
  }

  private void ways(String agent) {
    Reach.of(formula, agent).ifKnown(reach -> reach.ways().forEach(way -> propose(way.answer())));
  }

  private Span step(StepPlace place) {
    return formula
        .formula()
        .stages()
        .get(place.stage())
        .steps()
        .get(place.step())
        .span();
  }

  private boolean isHere(Span span) {
    return !formula.formula().inherits(span) && line.contains(span);
  }

  private void propose(Outcome<Answer> outcome) {
    outcome.ifKnown(answer -> propose(answer, answer.instruction()));
  }

  private void propose(Answer answer, String title) {
    if (CookTemperature.leadsToCaramel(answer)) {
      return;
    }
    new AnswerEdits(snapshot, entry, formula)
        .of(answer.changes())
        .filter(edits -> !edits.isEmpty())
        .map(edits -> new Proposal(title, edits))
        .filter(proposal -> !proposals.contains(proposal))
        .ifPresent(proposals::add);
  }
}
