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
 * Reports a bowl that is to whip more than its whisk can take, or so little that the whisk does not
 * reach it.
 *
 * <p>An error only where the mass that is whipped is too much by itself, whatever is folded in later.
 */
public final class OverfullBowl implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("overfull-bowl", "a bowl is to whip more or less than its whisk can");

  /** How little a whisk still reaches is known no better; common practice, no source. */
  private static final double ROUGHLY = 0.75;

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
                .filter(split -> !isLittle(split)
                    || split.total().grams() < ROUGHLY * split.whips().low().grams())
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
    boolean isLittle = isLittle(split);
    Mass limit = isLittle ? split.whips().low() : split.whips().high();
    Finding finding = INFO.at(
            bowl.span(),
            isLittle
                ? "%s in `%s` is less than the %s that its whisk needs"
                : "%s in `%s` is more than the %s that it whips",
            Display.estimate(split.total()),
            bowl.value(),
            Display.batch(limit))
        .because(
            isLittle
                ? "the whisk does not reach it, and no foam forms; take a smaller bowl or a larger"
                    + " batch"
                : "it runs over or stays flat; make %d charges of %s"
                    .formatted(split.charges(), Display.estimate(split.each())));
    return finding
        .as(severity(stage, isLittle, limit))
        .withFixes(fixes(subject, computed, split, bowl, limit));
  }

  private static boolean isLittle(VesselSplit split) {
    return split.total().compareTo(split.whips().low()) < 0;
  }

  private static Severity severity(StageResult stage, boolean isLittle, Mass limit) {
    if (isLittle) {
      return Severity.INFORMATION;
    }
    return whipped(stage) > limit.grams() ? Severity.ERROR : Severity.WARNING;
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
        .filter(batch -> split.charges() > 1)
        .map(batch -> {
          double most = batch.value().doubleValue() * limit.grams() / split.total().grams();
          String figure = Display.trimmed(Math.floor(most * 10) / 10, 1) + " g";
          return Fix.replace("Set the batch to " + figure, batch.span(), figure);
        })
        .ifPresent(fixes::add);
    return fixes;
  }
}
