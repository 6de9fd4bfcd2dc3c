package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Reports several gelling agents that would each set the mass alone.
 *
 * <p>Each dose counts against the middle of its usual ones; a blend of halves adds up to about one.
 */
public final class GellingAgentsTogether implements Rule {

  private static final RuleInfo INFO = RuleInfo.information(
      "gelling-agents-together", "several gelling agents, each at its full dose");

  /** Less than this part of its middle dose is there for something else than the gel; an own choice. */
  private static final double TRACE = 0.25;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().flatMap(formula -> check(subject, formula)).stream()
        .toList();
  }

  private static Optional<Finding> check(Subject subject, ComputedFormula formula) {
    List<Dose> doses = Dose.of(formula)
        .filter(dose -> dose.ingredient().hasRole("gelling"))
        .filter(dose -> dose.against(dose.middle()) > TRACE)
        .toList();
    boolean several =
        doses.stream().map(dose -> dose.ingredient().name().value()).distinct().count() > 1;
    double sum = doses.stream().mapToDouble(dose -> dose.against(dose.middle())).sum();
    Ratio most = subject.threshold(Threshold.AGENTS_TOGETHER);
    return several && sum > most.fraction()
        ? Optional.of(finding(subject, doses, sum, most))
        : Optional.empty();
  }

  private static Finding finding(Subject subject, List<Dose> doses, double sum, Ratio most) {
    Dose first = doses.get(0);
    Finding finding = INFO.at(
            first.amount().line().ingredient().span(),
            "%s together are %s times a usual dose",
            doses.stream()
                .map(dose -> "`" + dose.ingredient().name().value() + "`")
                .distinct()
                .collect(Collectors.joining(" and ")),
            Display.trimmed(sum, 1))
        .because("each of them sets the mass alone; together they set to rubber, or pull it apart");
    for (Dose dose : doses.subList(1, doses.size())) {
      finding = finding.withRelated(
          subject.entry().origin(dose.amount().line().ingredient().span()), "weighed in here");
    }
    List<TextEdit> edits = new ArrayList<>();
    double factor = Math.min(0.5, 0.95 * most.fraction() / sum);
    for (Dose dose : doses) {
      Optional<Fix> less = dose.times(subject, factor, "");
      if (less.isEmpty()) {
        return finding;
      }
      edits.addAll(less.get().edits());
    }
    return finding.withFix(
        new Fix(factor < 0.5 ? "Take less of each" : "Take half of each", edits));
  }
}
