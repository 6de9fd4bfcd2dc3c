package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.science.DoctorSugars;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Tells of a mass that is to be short, and whose sugar will hardly grain. */
public final class NoGrain implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.information("no-grain", "a mass that is to be short will hardly grain");

  /** With less of sugars, as in a biscuit, fat makes it short; common practice, no source. */
  private static final double MOSTLY_SUGAR = 0.5;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return FinishedMass.of(subject)
        .filter(mass -> mass.isMeantToBe("short"))
        .filter(mass -> mass.composition().sweetSolids().fraction() > MOSTLY_SUGAR)
        .flatMap(mass -> why(subject, mass)
            .map(why -> INFO.at(mass.place(), "%s", why)
                .because(
                    "without crystals it pulls and sticks; less doctor, less water, or a seed of"
                        + " icing sugar make it grain")
                .withFixes(lessDoctor(subject, mass))
                .withFixes(mass.textureFix(subject, "chewy"))))
        .stream()
        .toList();
  }

  /** Only where there is too much of it. */
  private static List<Fix> lessDoctor(Subject subject, FinishedMass mass) {
    Ratio usual = DoctorSugars.Usual.GRAINED.sucroseShare().high().complement();
    boolean isMuch = mass.figures().doctorShare().orElse(Ratio.ZERO).compareTo(usual) > 0;
    return isMuch ? DoctorSwap.to(subject, mass.formula(), usual) : List.of();
  }

  private static Optional<String> why(Subject subject, FinishedMass mass) {
    Optional<String> dissolved = mass.figures()
        .supersaturation()
        .toOptional()
        .filter(band -> band.isWhollyBelow(Ratio.ONE))
        .map(band ->
            "all its sucrose stays dissolved, " + Display.number(band, 2) + " times saturated");
    Ratio most = subject.threshold(Threshold.MOST_DOCTOR_IN_GRAIN);
    return dissolved.or(() -> mass.figures()
        .doctorShare()
        .toOptional()
        .filter(doctor -> doctor.compareTo(most) > 0 && !isSeeded(mass.formula()))
        .map(doctor -> Display.estimate(doctor)
            + " of the saccharides are not sucrose and hold back the grain"));
  }

  /** Whether dry sugar goes in that no cook dissolves. */
  private static boolean isSeeded(ComputedFormula formula) {
    Set<Amounts.LineAmount> cooked = CookStep.of(formula)
        .flatMap(cook -> InThePan.of(formula, cook).lines().stream())
        .collect(Collectors.toUnmodifiableSet());
    return formula.amounts().lines().stream()
        .filter(line -> !cooked.contains(line))
        .anyMatch(line -> formula
            .material(InThePan.name(line))
            .flatMap(Material::ingredient)
            .filter(ingredient -> ingredient.hasTrait("crystalline"))
            .isPresent());
  }
}
