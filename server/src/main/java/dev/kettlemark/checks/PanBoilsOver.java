package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Volume;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Reports a pan that a boiling mass rises out of. */
public final class PanBoilsOver implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
          "pan-boils-over", "a boiling mass rises above the rim of its pan")
      .forSafety();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().filter(computed -> !computed.isNominal()).stream()
        .flatMap(computed -> computed.process().stages().stream()
            .flatMap(stage -> check(subject, computed, stage).stream()))
        .toList();
  }

  private static Optional<Finding> check(
      Subject subject, ComputedFormula computed, StageResult stage) {
    Optional<House> house = computed.kitchen().house();
    Optional<Located<String>> name = stage.stage().vessel();
    Optional<Volume> holds =
        name.flatMap(n -> house.flatMap(h -> h.vessel(n.value()))).flatMap(House.Vessel::holds);
    if (name.isEmpty() || house.isEmpty() || holds.isEmpty()) {
      return Optional.empty();
    }
    Optional<Double> litres = stage.steps().stream()
        .filter(PanBoilsOver::boils)
        .flatMap(step -> litres(computed, step).stream())
        .max(Comparator.naturalOrder());
    if (litres.isEmpty()) {
      return Optional.empty();
    }
    double risen = litres.get() * subject.threshold(Threshold.PAN_RISE).fraction();
    return risen > holds.get().litres()
        ? Optional.of(finding(
            subject, house.get(), name.get(), litres.get(), risen, holds.get().litres()))
        : Optional.empty();
  }

  private static boolean boils(StepResult step) {
    Verb.Effect effect =
        Verb.of(step.step().word().value()).map(Verb::effect).orElse(Verb.Effect.NONE);
    return effect == Verb.Effect.COOK || effect == Verb.Effect.BOIL;
  }

  /** What lies in the pan before it boils; empty where the weight or density of some is unknown. */
  private static Optional<Double> litres(ComputedFormula computed, StepResult step) {
    double litres = 0;
    for (StageParcel parcel : step.before()) {
      Outcome<Density> density = MassFigures.of(parcel, computed.kitchen()).densityWithoutAir();
      Optional<Double> volume =
          Outcome.both(parcel.mass(), density, Mass::at).map(Volume::litres).toOptional();
      if (volume.isEmpty()) {
        return Optional.empty();
      }
      litres += volume.get();
    }
    return Optional.of(litres);
  }

  private static Finding finding(
      Subject subject,
      House house,
      Located<String> pan,
      double litres,
      double risen,
      double holds) {
    Finding finding = OtherPlace.tool(
        INFO.at(
                pan.span(),
                "about %s boil up to %s, and `%s` holds %s",
                volume(litres),
                volume(risen),
                pan.value(),
                volume(holds))
            .because("hot sugar that boils over burns the skin deeply and feeds the fire"),
        subject,
        pan.value());
    Finding judged = litres > holds ? finding.as(Severity.ERROR) : finding;
    Optional<House.Vessel> larger = house.vessels().stream()
        .filter(vessel -> vessel.kind().equals("pan"))
        .filter(vessel -> vessel.holds().filter(v -> v.litres() >= risen).isPresent())
        .min(Comparator.comparingDouble(
            vessel -> vessel.holds().map(Volume::litres).orElse(0.0)));
    return larger
        .filter(vessel -> subject.isWrittenHere(pan.span()))
        .map(vessel -> judged.withFix(Fix.replace(
            "Take `" + vessel.name().value() + "`", pan.span(), vessel.name().value())))
        .orElse(judged);
  }

  private static String volume(double litres) {
    return Display.volume(Band.of(Volume.ofMillilitres(litres * 1000)));
  }
}
