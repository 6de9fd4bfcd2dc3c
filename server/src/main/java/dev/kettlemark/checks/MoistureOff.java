package dev.kettlemark.checks;

import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Ratio;
import java.util.List;
import java.util.Optional;

/** Reports a chew that is too wet to keep its shape or so dry that it breaks teeth. */
public final class MoistureOff implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("moisture-off", "a chew holds far more or less water than a chew can");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return FinishedMass.of(subject)
        .filter(mass -> mass.isMeantToBe("chewy") && mass.isCooked())
        .flatMap(mass ->
            mass.figures().moisture().toOptional().flatMap(water -> check(subject, mass, water)))
        .stream()
        .toList();
  }

  private static Optional<Finding> check(Subject subject, FinishedMass mass, Band<Ratio> water) {
    boolean isFoam = mass.figures().parcel().isAerated();
    Band<Ratio> usual =
        subject.threshold(isFoam ? Threshold.CHEWY_FOAM_MOISTURE : Threshold.CHEWY_MOISTURE);
    if (water.overlaps(usual)) {
      return Optional.empty();
    }
    boolean isWet = water.isWhollyAbove(usual.high());
    Ratio wanted = usual.low().plus(usual.high()).times(0.5);
    return Optional.of(INFO.at(
            mass.place(),
            "it holds %s water, and %s is %s",
            Display.estimate(water),
            isFoam ? "a chewy foam" : "a chew",
            Display.range(usual.low(), usual.high()))
        .because((isWet
                ? "it flows out of shape and sticks to its paper; "
                : "it is hard enough to break teeth; ")
            + grams(mass, wanted))
        .withFixes(mass.cookTo(subject, wanted)));
  }

  /** How much water must go or come for the middle of the usual range. */
  private static String grams(FinishedMass mass, Ratio wanted) {
    double whole = mass.figures().parcel().mass().map(Mass::grams).orElse(0.0);
    double surplus = whole
        * (mass.composition().water().fraction() - wanted.fraction())
        / wanted.complement().fraction();
    String amount = Display.estimate(Mass.ofGrams(Math.abs(surplus)));
    return surplus > 0
        ? "weigh in " + amount + " less water that stays, or cook that much more off"
        : "cook " + amount + " less water off";
  }
}
