package dev.kettlemark.checks;

import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.TakeLine;
import dev.kettlemark.reading.Suggestions;
import java.util.List;

/**
 * Reports a mass taken of a stage that the formula does not have.
 *
 * <p>What it weighs and what it is made of are then unknown for all that follows.
 */
public final class UnknownStage implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("unknown-stage", "a mass is taken of a stage that does not exist");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(computed -> computed.formula().stages().stream()
            .flatMap(stage -> stage.takes().stream())
            .filter(take -> computed.formula().stage(take.stage().value()).isEmpty())
            .map(take -> finding(subject, computed.formula(), take)))
        .toList();
  }

  private static Finding finding(Subject subject, Formula formula, TakeLine take) {
    String name = take.stage().value();
    List<String> stages =
        formula.stages().stream().map(Stage::name).map(n -> n.value()).toList();
    Finding finding = INFO.at(
            take.stage().span(),
            "the formula has no stage `%s`%s",
            name,
            Suggestions.sentence(name, stages))
        .because("only what a stage leaves can be taken; all else is weighed in");
    if (subject.isWrittenHere(take.stage().span())) {
      for (String near : Suggestions.near(name, stages)) {
        finding =
            finding.withFix(Fix.replace("Write `" + near + "`", take.stage().span(), near));
      }
    }
    return finding;
  }
}
