package dev.kettlemark.checks;

import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.State;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reports egg white that is whipped fast for long, up to stiff peak, with little sugar in it.
 *
 * <p>Whether a protein stands it is a fact of the pantry. Sugar that makes up half of the foam holds its
 * water and protects it.
 */
public final class OverWhippedFoam implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("over-whipped-foam", "egg white is whipped fast for too long");

  /** From this share of sugar on a foam is a meringue, and is whipped for long; an own estimate. */
  private static final double PROTECTED = 0.5;

  private static final String HIGH = "high";

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    long most = subject.threshold(Threshold.OVER_WHIPPING).toSeconds();
    return subject.formula().stream()
        .flatMap(DoneStep::of)
        .filter(step -> step.step().is("whip") && step.step().has(Connective.ON, HIGH))
        .filter(step -> step.step().has(Connective.UNTIL, State.STIFF_PEAK.word()))
        .filter(step -> step.seconds(Connective.FOR).filter(time -> time > most).isPresent())
        .flatMap(step -> delicate(step).map(name -> finding(subject, step, name)).stream())
        .toList();
  }

  /** What in the foam does not stand long whipping; empty where all does. */
  private static Optional<String> delicate(DoneStep step) {
    return step.after().stream()
        .filter(parcel -> parcel
            .composition()
            .map(foam -> foam.sweetSolids().fraction() < PROTECTED)
            .orElse(false))
        .flatMap(parcel -> delicate(step, parcel).stream())
        .findFirst();
  }

  private static Optional<String> delicate(DoneStep step, StageParcel parcel) {
    return WeighedIn.of(step.formula()).in(step.stageIndex(), parcel).stream()
        .filter(held -> held.ingredient()
            .flatMap(ingredient -> ingredient.agent().overWhipping())
            .filter(stands -> !stands)
            .isPresent())
        .map(WeighedIn.Held::name)
        .findFirst();
  }

  private static Finding finding(Subject subject, DoneStep step, String name) {
    return INFO.at(
            step.step().word().span(),
            "`%s` is whipped on high for %s, up to stiff peak",
            name,
            Display.duration(step.seconds(Connective.FOR).orElse(0.0)))
        .because("egg white that is whipped on turns grainy and weeps; start the whisk later, and"
            + " stop at soft peak where a syrup is to come")
        .withFixes(fixes(subject, step));
  }

  private static List<Fix> fixes(Subject subject, DoneStep step) {
    if (!subject.isWrittenHere(step.step().span())) {
      return List.of();
    }
    List<Fix> fixes = new ArrayList<>();
    Optional<Located<String>> speed = named(step, Connective.ON, HIGH);
    named(step, Connective.UNTIL, State.STIFF_PEAK.word())
        .ifPresent(peak -> fixes.add(
            Fix.replace("Whip it until soft-peak only", peak.span(), State.SOFT_PEAK.word())));
    speed.ifPresent(high ->
        fixes.add(new Fix("Whip it on medium", List.of(new TextEdit(high.span(), "medium")))));
    return fixes;
  }

  private static Optional<Located<String>> named(DoneStep step, Connective word, String name) {
    return step.step().names(word).stream()
        .filter(found -> found.value().equals(name))
        .findFirst();
  }
}
