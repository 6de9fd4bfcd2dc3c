package dev.kettlemark.checks;

import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import java.util.List;

/**
 * Reports a gelling, thickening or whipping agent far above its usual dose.
 *
 * <p>The dose counts on the basis of which the pantry tells it. A gum that is dosed of the charge where
 * its usual dose is of the liquid is told by {@link GumOfCharge} alone.
 */
public final class AgentOverdose implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("agent-overdose", "far more of an agent than is usual");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Ratio much = subject.threshold(Threshold.HIGH_DOSE);
    Ratio never = subject.threshold(Threshold.GUM_OVERDOSE);
    return subject.formula().stream()
        .flatMap(formula -> Dose.of(formula)
            .filter(dose -> dose.against(dose.usual().high()) > much.fraction())
            .filter(dose -> dose.against(dose.usual().high()) <= never.fraction()
                || dose.isOwnBasis()
                || !ChargeLines.isOfCharge(formula, dose.amount().line())))
        .map(dose -> finding(subject, dose, never))
        .toList();
  }

  private static Finding finding(Subject subject, Dose dose, Ratio never) {
    double times = dose.against(dose.usual().high());
    Finding finding = OtherPlace.fact(
        INFO.at(
                dose.amount().line().measure().span(),
                "%s of %s is %s times the most that is usual of `%s`",
                Display.percent(dose.dose()),
                dose.usual().basis().words(),
                Display.trimmed(times, 1),
                dose.amount().line().ingredient().value())
            .as(times > never.fraction() ? Severity.ERROR : Severity.WARNING)
            .because("usual is " + dose.usualWords() + "; so much makes rubber, or tastes of it"),
        subject,
        dose.amount().line().ingredient().value(),
        "use");
    return dose.times(subject, 1 / times, "Take the most that is usual")
        .map(finding::withFix)
        .orElse(finding);
  }
}
