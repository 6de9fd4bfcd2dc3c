package dev.kettlemark.checks;

import dev.kettlemark.analysis.Boiling;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import java.util.List;
import java.util.Optional;

/** Reports a coat that is tempered outside its own range, such as a milk couverture like a dark one. */
public final class WrongTemper implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("wrong-temper", "a coat is tempered outside its own range");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(formula -> formula.process().stages().stream())
        .flatMap(stage -> stage.steps().stream())
        .filter(step -> step.step().is("temper"))
        .flatMap(step -> check(subject, step).stream())
        .toList();
  }

  private static Optional<Finding> check(Subject subject, StepResult step) {
    Optional<Located<Quantity>> figure = step.step()
        .figure(Connective.TO, Unit.Dimension.TEMPERATURE)
        .or(() -> step.step().figure(Connective.AT, Unit.Dimension.TEMPERATURE));
    return figure.flatMap(written -> TemperRange.of(subject, step.before())
        .filter(coat -> !coat.range().overlaps(Boiling.band(written.value())))
        .map(coat -> finding(subject, written, coat)));
  }

  private static Finding finding(Subject subject, Located<Quantity> written, TemperRange coat) {
    Finding finding = OtherPlace.fact(
        INFO.at(
                written.span(),
                "`%s` is tempered at %s, not at %s",
                coat.name(),
                coat.shown(),
                Display.celsius(Boiling.band(written.value()).low()))
            .because("warmer it loses its crystals and blooms, colder it is thick and dull"),
        subject,
        coat.name(),
        "tempers");
    return subject.isWrittenHere(written.span())
        ? finding.withFix(Fix.replace("Temper to " + coat.shown(), written.span(), coat.shown()))
        : finding;
  }
}
