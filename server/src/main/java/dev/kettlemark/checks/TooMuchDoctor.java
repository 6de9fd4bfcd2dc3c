package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/** Reports a boiled sugar mass that stays sticky and flows, since most of its sugars are doctors. */
public final class TooMuchDoctor implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "too-much-doctor", "the mass stays sticky and flows, for most of it is doctor sugars");

  /** With less of sugars something else makes the texture; common practice, no source. */
  private static final double MOSTLY_SUGAR = 0.5;

  /** How far below the limit a swap aims. */
  private static final Ratio MARGIN = Ratio.ofPercent(5);

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return FinishedMass.of(subject)
        .filter(FinishedMass::isBoiled)
        .filter(mass -> mass.composition().sweetSolids().fraction() > MOSTLY_SUGAR)
        .flatMap(mass -> most(subject, mass)
            .flatMap(most -> mass.figures()
                .doctorShare()
                .toOptional()
                .map(doctor -> amongSweet(doctor, mass.composition()))
                .filter(doctor -> doctor.compareTo(most) > 0)
                .map(doctor -> finding(subject, mass, doctor, most))))
        .stream()
        .toList();
  }

  private static Optional<Ratio> most(Subject subject, FinishedMass mass) {
    if (mass.isMeantToBe("chewy")) {
      return Optional.of(subject.threshold(Threshold.MOST_DOCTOR_IN_CHEW));
    }
    return mass.isMeantToBe("brittle", "hard")
        ? Optional.of(subject.threshold(Threshold.MOST_DOCTOR_IN_GLASS))
        : Optional.empty();
  }

  /** Polyols and trehalose make a mass that is dry by itself, as sucrose does. */
  private static Ratio amongSweet(Ratio doctor, Composition composition) {
    double sweet = composition.sweetSolids().fraction();
    double doctors = composition.saccharides().fraction()
        - composition.fraction(Component.SUCROSE)
        - composition.fraction(Component.TREHALOSE);
    Ratio among = Ratio.ofFraction(Math.max(0, doctors) / sweet);
    return among.compareTo(doctor) < 0 ? among : doctor;
  }

  private static Finding finding(Subject subject, FinishedMass mass, Ratio doctor, Ratio most) {
    Optional<Amounts.LineAmount> bringer = mass.formula().amounts().lines().stream()
        .max(Comparator.comparing(line -> doctors(mass.formula(), line)));
    Finding finding = INFO.at(
            mass.place(),
            "%s of the saccharides are not sucrose%s",
            Display.estimate(doctor),
            bringer
                .map(line -> ", most of them of `" + InThePan.name(line) + "`")
                .orElse(""))
        .because("above " + Display.estimate(most)
            + " such a mass is sticky, flows out of shape and sweats")
        .withFixes(DoctorSwap.to(subject, mass.formula(), most.minus(MARGIN)));
    return bringer
        .map(line -> finding.withRelated(
            subject.entry().origin(line.line().ingredient().span()), "brings most of them"))
        .orElse(finding);
  }

  private static double doctors(ComputedFormula formula, Amounts.LineAmount line) {
    double share = line.share().map(BigFraction::doubleValue).orElse(0.0);
    return share
        * formula
            .material(InThePan.name(line))
            .flatMap(material -> material.composition().toOptional())
            .map(c -> c.saccharides().fraction() - c.fraction(Component.SUCROSE))
            .orElse(0.0);
  }
}
