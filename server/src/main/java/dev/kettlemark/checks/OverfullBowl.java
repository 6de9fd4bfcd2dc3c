package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Located;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.scaling.VesselSplit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Reports a bowl that is to whip more than its whisk can take; {@link WhiskOutOfReach} tells of too
 * little.
 *
 * <p>An error only where the mass that is whipped is too much by itself, whatever is folded in later.
 */
public final class OverfullBowl implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("overfull-bowl", "a bowl is to whip more than its whisk can");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().filter(computed -> !computed.isNominal()).stream()
        .flatMap(computed -> computed.process().stages().stream()
            .filter(stage -> stage.steps().stream().anyMatch(step -> step.step().is("whip")))
            .flatMap(stage -> VesselSplit.of(computed, stage)
                .filter(split -> split.total().compareTo(split.whips().high()) > 0)
                .stream()
                .flatMap(split -> stage.stage().vessel().stream()
                    .map(bowl -> finding(subject, computed, stage, split, bowl)))))
        .toList();
  }

  private static Finding finding(
      Subject subject,
      ComputedFormula computed,
      StageResult stage,
      VesselSplit split,
      Located<String> bowl) {
    Mass limit = split.whips().high();
    Finding finding = OtherPlace.tool(
        INFO.at(
                bowl.span(),
                "%s in `%s` is more than the %s that it whips",
                Display.estimate(split.total()),
                bowl.value(),
                Display.batch(limit))
            .because("it runs over or stays flat; make %d charges of %s"
                .formatted(split.charges(), Display.estimate(split.each()))),
        subject,
        bowl.value());
    Finding judged = whipped(stage) > limit.grams() ? finding.as(Severity.ERROR) : finding;
    return judged.withFixes(fixes(subject, computed, split, bowl, limit));
  }

  /** The least that the largest mass weighs that is whipped in a stage, in grams. */
  private static double whipped(StageResult stage) {
    return stage.steps().stream()
        .filter(step -> step.step().is("whip"))
        .mapToDouble(step -> step.after().stream()
            .filter(StageParcel::isAerated)
            .mapToDouble(parcel ->
                parcel.mass().map(Mass::grams).orElse(0.0) - parcel.slack().grams())
            .sum())
        .max()
        .orElse(0);
  }

  private static List<Fix> fixes(
      Subject subject,
      ComputedFormula computed,
      VesselSplit split,
      Located<String> bowl,
      Mass limit) {
    List<Fix> fixes = new ArrayList<>();
    Optional<String> other = computed.kitchen().house().stream()
        .flatMap(house -> house.vessels().stream())
        .filter(vessel -> vessel.whips().filter(w -> w.contains(split.total())).isPresent())
        .min(Comparator.comparingDouble(
            vessel -> vessel.whips().map(w -> w.high().grams()).orElse(0.0)))
        .map(House.Vessel::name)
        .map(Located::value);
    other
        .filter(name -> subject.isWrittenHere(bowl.span()))
        .map(name -> Fix.replace("Take `" + name + "`", bowl.span(), name))
        .ifPresent(fixes::add);
    computed
        .formula()
        .batch()
        .filter(batch -> subject.isWrittenHere(batch.span()))
        .map(batch -> {
          double most =
              batch.value().doubleValue() * limit.grams() / split.total().grams();
          String figure = Display.trimmed(Math.floor(most * 10) / 10, 1) + " g";
          return Fix.replace("Set the batch to " + figure, batch.span(), figure);
        })
        .ifPresent(fixes::add);
    return fixes;
  }
}
