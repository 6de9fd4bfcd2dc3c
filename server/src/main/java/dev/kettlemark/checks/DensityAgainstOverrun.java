package dev.kettlemark.checks;

import dev.kettlemark.analysis.AirReading;
import dev.kettlemark.analysis.Measurement;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import java.util.List;
import java.util.stream.Stream;

/**
 * Reports a density and an overrun of one mass that contradict each other.
 *
 * <p>With the density of the mass without air, each follows from the other.
 */
public final class DensityAgainstOverrun implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "density-against-overrun", "a measured density contradicts the measured overrun");

  /**
   * So many points of overrun may lie between them: a density without air that is off by two percent,
   * and a cup filled unevenly; an own estimate.
   */
  private static final double MOST = 15;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return TrialSubject.of(subject).stream()
        .flatMap(trial -> trial.compared().airs().stream())
        .flatMap(air ->
            air.measuredOverrun().stream().flatMap(measured -> check(subject, air, measured)))
        .toList();
  }

  private static Stream<Finding> check(Subject subject, AirReading air, Measurement measured) {
    double computed = air.overrun().map(Ratio::percent).orElse(measured.value());
    return Math.abs(computed - measured.value()) <= MOST
        ? Stream.empty()
        : Stream.of(finding(subject, air, measured, computed));
  }

  private static Finding finding(
      Subject subject, AirReading air, Measurement measured, double computed) {
    String percent = Display.fixed(computed, 0) + " %";
    return INFO.at(
            measured.figure().span(),
            "an overrun of %s, but %s of `%s` are an overrun of %s",
            measured.shown(),
            air.density().shown(),
            air.stage(),
            percent)
        .because("without air it has "
            + air.withoutAir()
                .map(solid -> Display.fixed(solid.gramsPerMillilitre(), 2))
                .orElse("an unknown number of")
            + " g/mL, and each follows from the other")
        .withRelated(subject.entry().origin(air.density().figure().span()), "the density")
        .withFix(Fix.replace(
            "Write the computed overrun, " + percent, measured.figure().span(), percent));
  }
}
