package dev.kettlemark.checks;

import dev.kettlemark.analysis.Boiling;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Portion;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.SaturationLine;
import dev.kettlemark.science.SyrupBoiling;
import java.util.List;
import java.util.Optional;

/**
 * Reports a charge that is thicker than its cook temperature can leave it.
 *
 * <p>It passes the target before it boils, so nothing evaporates and the sugar may not even dissolve.
 */
public final class AlreadyConcentrated implements Rule {

  private static final RuleInfo INFO = RuleInfo.error(
      "already-concentrated", "the charge is thicker than its cook temperature can leave it");

  /** Expected error of the boiling model in points of water, see {@link SyrupBoiling}. */
  private static final Ratio MODEL_ERROR = Ratio.ofPercent(1.0);

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(
            formula -> CookStep.of(formula).flatMap(cook -> check(subject, formula, cook).stream()))
        .toList();
  }

  private static Optional<Finding> check(Subject subject, ComputedFormula formula, CookStep cook) {
    Pressure pressure = Boiling.meant(cook.step(), formula.kitchen()).pressure();
    Temperature target = cook.band().high();
    boolean boilsAtAll = SaturationLine.boilingPoint(pressure)
        .toOptional()
        .filter(water -> water.compareTo(target) < 0)
        .isPresent();
    if (!boilsAtAll || cook.charge().isEmpty()) {
      return Optional.empty();
    }
    Portion charge = cook.charge().get();
    Composition composition = charge.composition();
    Optional<Ratio> left = SyrupBoiling.waterLeft(composition, target, pressure).toOptional();
    Optional<Temperature> boils =
        SyrupBoiling.boilingPoint(composition, pressure).toOptional();
    if (left.isEmpty()
        || boils.isEmpty()
        || composition.water().plus(MODEL_ERROR).compareTo(left.get()) > 0) {
      return Optional.empty();
    }
    return Optional.of(finding(subject, cook, charge, left.get(), boils.get()));
  }

  private static Finding finding(
      Subject subject, CookStep cook, Portion charge, Ratio left, Temperature boils) {
    Finding finding = INFO.at(
            cook.target().span(),
            "the charge first boils at %s, above the target of %s",
            Display.celsius(boils),
            Display.celsius(cook.middle()))
        .because(String.format(
            "it holds %s solids, and this target leaves %s; it wants at least %s more water",
            Display.estimate(charge.composition().solids()),
            Display.estimate(left.complement()),
            Display.mass(waterToAdd(charge, left))));
    return subject.isWrittenHere(cook.target().span())
        ? finding.withFix(raise(cook, boils))
        : finding;
  }

  private static Mass waterToAdd(Portion charge, Ratio left) {
    Mass water = charge.massOf(Component.WATER);
    Mass solids = charge.mass().minus(water);
    return solids.times(left.fraction() / left.complement().fraction()).minus(water);
  }

  /** The first whole degree at which the charge boils, in the scale that was written. */
  private static Fix raise(CookStep cook, Temperature boils) {
    boolean isFahrenheit =
        cook.target().value().unit().filter(unit -> unit == Unit.FAHRENHEIT).isPresent();
    String figure = isFahrenheit
        ? Display.fixed(Math.ceil(boils.fahrenheit()), 0) + " °F"
        : Display.fixed(Math.ceil(boils.celsius()), 0) + " °C";
    return Fix.replace("Cook to " + figure, cook.target().span(), figure);
  }
}
