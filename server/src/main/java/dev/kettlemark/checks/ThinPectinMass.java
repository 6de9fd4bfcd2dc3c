package dev.kettlemark.checks;

import dev.kettlemark.analysis.Agent;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.text.TextEdit;
import java.util.List;
import java.util.stream.Stream;

/**
 * Reports a pectin that sets in sugar only, in a mass with too little of it.
 *
 * <p>An error where the whole band of soluble solids lies below the limit, a warning where part of it does.
 */
public final class ThinPectinMass implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("thin-pectin-mass", "a pectin that sets in sugar has too little of it");

  /** Sets at any solids, and brings the calcium that it needs. */
  private static final String OTHER = "pectin-nh";

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Ratio least = subject.threshold(Threshold.ACID_GEL_SOLIDS);
    return subject.formula().stream()
        .flatMap(formula -> Finish.agents(formula).stream()
            .flatMap(agent -> AcidGel.of(formula, agent).stream())
            .flatMap(gel -> gel
                .solids()
                .filter(solids -> solids.low().compareTo(least) < 0)
                .map(solids -> finding(subject, formula, gel.agent(), solids, least))
                .stream()))
        .toList();
  }

  private static Finding finding(
      Subject subject, ComputedFormula formula, Agent agent, Band<Ratio> solids, Ratio least) {
    boolean wholly = solids.isWhollyBelow(least);
    Finding finding = INFO.at(
            agent.line().span(),
            "`%s` sets above %s soluble solids, and the mass has %s",
            agent.name(),
            Display.trimmed(least.percent(), 1) + " %",
            Display.estimate(solids))
        .as(wholly ? Severity.ERROR : Severity.WARNING)
        .because("in a thinner mass it stays liquid; cook further, or take a low methoxyl pectin");
    List<TextEdit> edits = renamed(subject, formula, agent.name());
    return edits.isEmpty() || subject.ingredient(OTHER).isEmpty()
        ? finding
        : finding.withFix(new Fix("Take `" + OTHER + "` instead", edits));
  }

  /** Every place in this section where the agent is named; none where some of them stand in the parent. */
  private static List<TextEdit> renamed(Subject subject, ComputedFormula formula, String name) {
    List<Located<String>> places = Stream.concat(
            formula.formula().amounts().stream().map(AmountLine::ingredient),
            formula.formula().steps().flatMap(ThinPectinMass::names))
        .filter(place -> place.value().equals(name))
        .toList();
    return places.stream().allMatch(place -> subject.isWrittenHere(place.span()))
        ? places.stream().map(place -> new TextEdit(place.span(), OTHER)).toList()
        : List.of();
  }

  private static Stream<Located<String>> names(Statement step) {
    return Stream.concat(
        step.objectNames().stream(),
        Stream.of(Connective.values()).flatMap(word -> step.names(word).stream()));
  }
}
