package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports a temperature tolerance that is tighter than the thermometers of the house are accurate.
 *
 * <p>What a probe shows to a tenth of a degree, it still may miss by a degree.
 */
public final class ToleranceBelowProbe implements Rule {

  private static final RuleInfo INFO = RuleInfo.hint(
      "tolerance-below-probe", "a temperature tolerance is tighter than a probe can tell");

  private static final Pattern TOLERANCE =
      Pattern.compile("(?:±|\\+-|\\+/-)\\s*(\\d+(?:\\.\\d+)?)");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    double accuracy = subject.threshold(Threshold.PROBE_ACCURACY).celsius();
    List<Located<Quantity>> tolerances = new ArrayList<>();
    subject
        .formula()
        .map(ComputedFormula::formula)
        .ifPresent(formula -> formula
            .steps()
            .filter(step -> !formula.inherits(step.span()))
            .forEach(step -> {
              add(step.objects(), tolerances);
              step.clauses().forEach(clause -> add(clause.operands(), tolerances));
            }));
    return tolerances.stream()
        .flatMap(figure -> finding(subject, figure, accuracy).stream())
        .toList();
  }

  private static void add(List<Located<Operand>> operands, List<Located<Quantity>> tolerances) {
    for (Located<Operand> operand : operands) {
      if (operand.value() instanceof Operand.Figure figure
          && figure.quantity().tolerance().isPresent()
          && figure.quantity().measures(Unit.Dimension.TEMPERATURE)) {
        tolerances.add(new Located<>(figure.quantity(), operand.span()));
      }
    }
  }

  private static Optional<Finding> finding(
      Subject subject, Located<Quantity> figure, double accuracy) {
    Optional<BigFraction> tolerance = figure.value().toleranceInBase();
    if (tolerance.filter(t -> t.doubleValue() < accuracy - 1e-9).isEmpty()) {
      return Optional.empty();
    }
    Finding finding = OtherPlace.house(
        INFO.at(
                figure.span(),
                "%s is tighter than the ± %s °C that a probe is off by",
                Columns.shown(figure.span().of(subject.text())),
                Display.trimmed(accuracy, 1))
            .because("nobody can tell whether it was met"),
        subject,
        "thermometer");
    Matcher written = TOLERANCE.matcher(figure.span().of(subject.text()));
    return Optional.of(
        written.find() ? finding.withFix(widened(figure, written, accuracy)) : finding);
  }

  private static Fix widened(Located<Quantity> figure, Matcher written, double accuracy) {
    double size =
        figure.value().unit().map(Unit::factor).orElse(BigFraction.ONE).doubleValue();
    String wide = Display.trimmed(Math.ceil(accuracy / size * 10 - 1e-6) / 10, 1);
    int start = figure.span().start();
    return Fix.replace(
        "Widen to `± " + wide + "`",
        new Span(start + written.start(1), start + written.end(1)),
        wide);
  }
}
