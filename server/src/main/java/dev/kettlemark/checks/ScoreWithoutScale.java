package dev.kettlemark.checks;

import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.quantity.Display;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reports a score that does not say of how many.
 *
 * <p>A 7 means one thing of 9 and another of 10, and next year nobody remembers.
 */
public final class ScoreWithoutScale implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.hint("score-without-scale", "a score does not say of how many");

  /** The scales that a panel usually scores on; common practice, no source. */
  private static final List<Integer> USUAL = List.of(10, 9, 5);

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return TrialSubject.trial(subject).stream()
        .flatMap(trial -> trial.facts().all("scored"))
        .filter(score -> figures(behindOf(score)).findAny().isEmpty())
        .flatMap(score -> figures(score.objects().stream())
            .findFirst()
            .filter(figure -> figure.value().unit().isEmpty())
            .map(figure -> finding(subject, figure))
            .stream())
        .toList();
  }

  private static Finding finding(Subject subject, Located<Quantity> figure) {
    String written = figure.span().of(subject.text());
    double value = figure.value().middle().doubleValue();
    return INFO.at(figure.span(), "a score of %s, but of how many?", written)
        .because("without its scale a score means nothing to the next reader")
        .withFixes(USUAL.stream()
            .filter(most -> value <= most)
            .map(most -> written + " of " + Display.trimmed(most, 0))
            .map(text -> Fix.replace("Write `" + text + "`", figure.span(), text))
            .toList());
  }

  private static Stream<Located<Operand>> behindOf(Statement score) {
    return score.clauses().stream()
        .filter(clause -> clause.word() == Connective.OF)
        .flatMap(clause -> clause.operands().stream());
  }

  private static Stream<Located<Quantity>> figures(Stream<Located<Operand>> operands) {
    return operands.flatMap(operand -> Optional.of(operand.value())
        .flatMap(value -> value instanceof Operand.Figure figure
            ? Optional.of(new Located<>(figure.quantity(), operand.span()))
            : Optional.empty())
        .stream());
  }
}
