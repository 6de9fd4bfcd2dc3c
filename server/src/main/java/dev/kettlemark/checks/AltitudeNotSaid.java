package dev.kettlemark.checks;

import dev.kettlemark.analysis.Boiling;
import dev.kettlemark.analysis.Kitchen;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.SyrupBoiling;
import java.util.List;
import java.util.Optional;

/**
 * Reports a cook temperature in a kitchen so high that it matters whether it was meant for sea level.
 *
 * <p>At 2000 m everything boils some 7 to 8 °C sooner; the same figure leaves far less water there.
 */
public final class AltitudeNotSaid implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "altitude-not-said", "nothing says for which altitude a cook temperature holds");

  /** So many kelvin lie between one sugar stage and the next; see {@code SugarStage}. */
  private static final double ANOTHER_TEXTURE = 3;

  /** Behind {@code at} it says that a temperature holds for the kitchen it is cooked in. */
  private static final String FOR_HERE = "altitude";

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject
        .formula()
        .filter(formula -> !formula.kitchen().pressure().equals(Kitchen.SEA_LEVEL))
        .map(formula -> CookStep.of(formula)
            .filter(cook -> !cook.step().has(Connective.AT, FOR_HERE)
                && !cook.step().has(Connective.AT, Boiling.FOR_SEA_LEVEL))
            .flatMap(cook -> check(subject, formula.kitchen(), cook).stream())
            .toList())
        .orElse(List.of());
  }

  private static Optional<Finding> check(Subject subject, Kitchen kitchen, CookStep cook) {
    Temperature written = cook.middle();
    double slack = subject.threshold(Threshold.ALTITUDE_OFFSET).kelvin();
    return cook.charge()
        .flatMap(charge -> SyrupBoiling.sameSolids(
                charge.composition(), written, Kitchen.SEA_LEVEL, kitchen.pressure())
            .toOptional())
        .filter(local -> Math.abs(written.minus(local).kelvin()) > slack)
        .map(local -> finding(subject, kitchen, cook, local));
  }

  private static Finding finding(
      Subject subject, Kitchen kitchen, CookStep cook, Temperature local) {
    Finding finding = OtherPlace.house(
        INFO.at(
                cook.target().span(),
                "what %s leaves at sea level, %s leaves at the %s m of this kitchen",
                Display.celsius(cook.middle()),
                Display.celsius(local),
                Display.fixed(kitchen.altitudeMetres(), 0))
            .because("the figure holds for one of the two, and the other mass is harder or softer")
            .as(
                cook.middle().minus(local).kelvin() > ANOTHER_TEXTURE
                    ? Severity.WARNING
                    : Severity.INFORMATION),
        subject,
        "altitude");
    if (!subject.isWrittenHere(cook.target().span())) {
      return finding;
    }
    int end = cook.target().span().end();
    return finding
        .withFix(Fix.insert("Say that it holds for sea level", end, " at " + Boiling.FOR_SEA_LEVEL))
        .withFix(Fix.insert("Say that it holds for this kitchen", end, " at " + FOR_HERE));
  }
}
