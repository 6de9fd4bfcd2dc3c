package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.GrainingRisk;
import java.util.List;
import java.util.Optional;

/**
 * Reports a boiled sugar mass that will grain, since next to nothing in it but sucrose is sugar.
 *
 * <p>Grain is wanted where the texture is short or dry, and water or a gel forgives much where it is
 * soft. Caramel and boiled acid split sucrose by themselves, how much nobody knows.
 */
public final class TooLittleDoctor implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("too-little-doctor", "the mass will grain for want of doctor sugars");

  /** With less sucrose there is nothing much to grain; common practice, no source. */
  private static final double LITTLE_SUCROSE = 0.15;

  /** So much butter keeps the crystals of a toffee fine, and it is eaten so; common practice, no source. */
  private static final double MUCH_FAT = 0.2;

  /** What a mass gets that has too little; common practice, no source. */
  private static final Ratio ENOUGH = Ratio.ofPercent(30);

  /** A share that no figure makes clearer. */
  private static final Ratio NEXT_TO_NOTHING = Ratio.ofPercent(0.5);

  /** Caramel splits sucrose by itself. */
  private static final Temperature CARAMEL = Temperature.ofCelsius(160);

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return FinishedMass.of(subject)
        .filter(mass -> mass.isMeantToBe("chewy", "brittle", "hard"))
        .filter(mass -> mass.isBoiled() && !mass.isCookedAbove(CARAMEL))
        .filter(mass -> mass.composition().fraction(Component.SUCROSE) > LITTLE_SUCROSE)
        .filter(mass -> CookStep.of(mass.formula()).noneMatch(TooLittleDoctor::isToffee))
        .filter(mass -> !isSplitByAcid(mass.formula()))
        .flatMap(mass -> check(subject, mass))
        .stream()
        .toList();
  }

  private static boolean isToffee(CookStep cook) {
    return cook.charge()
        .filter(charge -> charge.composition().fraction(Component.FAT) >= MUCH_FAT)
        .isPresent();
  }

  private static boolean isSplitByAcid(ComputedFormula formula) {
    return CookStep.of(formula)
        .anyMatch(cook ->
            !InThePan.of(formula, cook).of(formula, UncountedInversion::isAcid).isEmpty());
  }

  private static Optional<Finding> check(Subject subject, FinishedMass mass) {
    Ratio doctor = mass.figures().doctorShare().orElse(Ratio.ONE);
    // So little water that the solubility is not known means far beyond saturation.
    Optional<Band<Ratio>> beyond = mass.figures().supersaturation().toOptional();
    boolean grainsByItself =
        beyond.isEmpty() || GrainingRisk.of(beyond.get().low()) == GrainingRisk.LABILE;
    Ratio least = grainsByItself
        ? subject.threshold(Threshold.LEAST_DOCTOR)
        : mass.isMeantToBe("chewy")
            ? subject.threshold(Threshold.LEAST_DOCTOR_IN_CHEW)
            : Ratio.ZERO;
    if (doctor.compareTo(least) >= 0) {
      return Optional.empty();
    }
    String saturation = beyond
        .map(band -> ", and the sucrose is " + Display.number(band, 1) + " times saturated")
        .orElse("");
    return Optional.of(INFO.at(
            mass.place(),
            doctor.compareTo(NEXT_TO_NOTHING) < 0
                ? "the saccharides are sucrose and next to nothing else%s%s"
                : "only %s of the saccharides are not sucrose%s",
            doctor.compareTo(NEXT_TO_NOTHING) < 0 ? "" : Display.estimate(doctor),
            saturation)
        .because("sucrose alone grains, and the mass turns short and dull; "
            + Display.estimate(least) + " is the least")
        .withFixes(DoctorSwap.to(subject, mass.formula(), ENOUGH)));
  }
}
