package dev.kettlemark.features;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Experiment.StepPlace;
import dev.kettlemark.answers.Answer;
import dev.kettlemark.answers.CookPlaces;
import dev.kettlemark.answers.CookTemperature;
import dev.kettlemark.answers.DoctorExchange;
import dev.kettlemark.answers.Shelf;
import dev.kettlemark.features.ScaleActions.Proposal;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What must be searched for to mend something: from the rule that found it to the question that is asked
 * of the formula.
 */
final class FindingQuestions {

  /** The question for what a rule finds; what a rule can mend by itself it mends itself. */
  private static final Map<String, BiFunction<FindingQuestions, Span, Stream<Proposal>>> OF_RULE =
      Map.of(
          "moisture-off", FindingQuestions::cooks,
          "texture-mismatch", FindingQuestions::cooks,
          "expectation-off", FindingQuestions::cooks,
          "altitude-not-said", FindingQuestions::local,
          "too-little-doctor", FindingQuestions::moreDoctor,
          "too-much-doctor", FindingQuestions::lessDoctor);

  /** How far within the limit a search aims. */
  private static final Ratio MARGIN = Ratio.ofPercent(5);

  /** Behind a cook temperature: it holds where it is cooked. */
  private static final String FOR_HERE = " at altitude";

  private final ComputedFormula formula;
  private final Shelf shelf;
  private final AnswerEdits edits;
  private final int offset;

  private FindingQuestions(Snapshot snapshot, Entry entry, ComputedFormula formula) {
    this.formula = formula;
    this.shelf = new Shelf(snapshot);
    this.edits = new AnswerEdits(snapshot, entry, formula);
    this.offset = entry.placed().offset();
  }

  /** Whether there is a question for what the rule finds. */
  static boolean isAsked(String rule) {
    return OF_RULE.containsKey(rule);
  }

  /**
   * The answers for one finding.
   *
   * @param span where it stands, counted from the section's start
   */
  static List<Proposal> answers(
      Snapshot snapshot, Entry entry, ComputedFormula formula, String rule, Span span) {
    return OF_RULE
        .getOrDefault(rule, (questions, at) -> Stream.empty())
        .apply(new FindingQuestions(snapshot, entry, formula), span)
        .distinct()
        .toList();
  }

  /** At the last cook that is written here, as what is cooked last sets what comes out. */
  private Stream<Proposal> cooks(Span span) {
    CookQuestions questions = new CookQuestions(formula);
    return lastCook().stream()
        .flatMap(place -> questions.wanted(place).stream())
        .flatMap(question -> question.answer().toOptional().stream()
            .filter(answer -> !CookTemperature.leadsToCaramel(answer))
            .flatMap(answer -> proposal(answer, question.title()).stream()));
  }

  private Stream<Proposal> local(Span span) {
    return new CookQuestions(formula)
        .atAltitude(step -> step.contains(span)).stream()
            .flatMap(question -> question.answer().toOptional().stream()
                .flatMap(answer -> proposal(answer, question.title()).stream()))
            .map(proposal -> {
              List<TextEdit> said = new ArrayList<>(proposal.edits());
              said.add(TextEdit.insert(offset + span.end(), FOR_HERE));
              return new Proposal(proposal.title(), said);
            });
  }

  private Stream<Proposal> moreDoctor(Span span) {
    return IntStream.range(0, formula.amounts().lines().size())
        .boxed()
        .flatMap(line -> DoctorQuestion.of(formula, shelf, line).stream())
        .flatMap(outcome -> outcome.toOptional().stream())
        .flatMap(answer -> proposal(answer, answer.instruction()).stream());
  }

  private Stream<Proposal> lessDoctor(Span span) {
    boolean isChewy = formula
        .formula()
        .facts()
        .wordOf("texture")
        .map(Located::value)
        .filter("chewy"::equals)
        .isPresent();
    Ratio most = formula
        .kitchen()
        .threshold(isChewy ? Threshold.MOST_DOCTOR_IN_CHEW : Threshold.MOST_DOCTOR_IN_GLASS);
    return lastCook().stream()
        .flatMap(place ->
            DoctorExchange.of(formula, shelf, place.stage(), most.minus(MARGIN), Optional.empty())
                .toOptional()
                .stream())
        .flatMap(answer -> proposal(answer, answer.instruction()).stream());
  }

  private Optional<StepPlace> lastCook() {
    return CookPlaces.of(formula).stream()
        .filter(place -> !formula
            .formula()
            .inherits(formula
                .formula()
                .stages()
                .get(place.stage())
                .steps()
                .get(place.step())
                .span()))
        .reduce((one, later) -> later);
  }

  private Optional<Proposal> proposal(Answer answer, String title) {
    return edits
        .of(answer.changes())
        .filter(changes -> !changes.isEmpty())
        .map(changes -> new Proposal(title, changes));
  }
}
