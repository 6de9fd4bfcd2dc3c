package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.State;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Temperature;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reports a hot syrup that meets egg white or another foaming agent before it is whipped.
 *
 * <p>The syrup wets and cooks the liquid, which then never takes up air. Soft peak is the usual moment;
 * common practice, no source. A foam that only is not said to have reached soft peak is likely, not
 * certainly, too weak, and gets a warning.
 *
 * <p>A formula without any {@code whip} makes no foam, and its protein is there for something else.
 */
public final class SyrupIntoUnwhippedFoam implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("syrup-into-unwhipped-foam", "hot syrup meets a foam that is not whipped yet");

  private static final Set<String> POURING = Set.of("stream", "pour");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject
        .formula()
        .filter(formula -> formula.formula().steps().anyMatch(step -> step.is("whip")))
        .map(formula -> check(subject, formula))
        .orElse(List.of());
  }

  private static List<Finding> check(Subject subject, ComputedFormula formula) {
    Set<String> foaming = foaming(formula);
    return formula.process().stages().stream()
        .flatMap(stage -> stage.steps().stream()
            .filter(step -> POURING.contains(step.step().word().value()))
            .flatMap(step -> unwhipped(subject, step, foaming).stream()
                .map(parcel -> finding(subject, formula.formula(), stage, step.step(), parcel))))
        .toList();
  }

  /** Ingredients that foam, and the stages that hold one. */
  private static Set<String> foaming(ComputedFormula formula) {
    Set<String> foaming = new HashSet<>();
    Foaming.of(formula).forEach(found -> foaming.add(found.name()));
    for (Stage stage : formula.formula().stages()) {
      if (stage.amounts().stream()
              .anyMatch(line -> foaming.contains(line.ingredient().value()))
          || stage.takes().stream()
              .anyMatch(take -> foaming.contains(take.stage().value()))) {
        foaming.add(stage.name().value());
      }
    }
    return foaming;
  }

  /** The mass that a hot one is poured into, if it ought to be a foam by then and is none. */
  private static Optional<StageParcel> unwhipped(
      Subject subject, StepResult step, Set<String> foaming) {
    Temperature hot = subject.threshold(Threshold.HOT_SYRUP);
    List<Located<String>> into = step.step().names(Connective.INTO);
    List<StageParcel> there = new ArrayList<>();
    boolean isHot = false;
    for (StageParcel parcel : step.before()) {
      if (into.stream().anyMatch(name -> parcel.holds(name.value()))) {
        there.add(parcel);
      } else {
        isHot |= parcel.temperature().isWhollyAbove(hot);
      }
    }
    return isHot
        ? there.stream()
            .filter(parcel -> parcel.names().stream().anyMatch(foaming::contains))
            .filter(parcel ->
                parcel.states().stream().noneMatch(state -> state.reaches(State.SOFT_PEAK)))
            .findFirst()
        : Optional.empty();
  }

  private static Finding finding(
      Subject subject, Formula formula, StageResult result, Statement pour, StageParcel parcel) {
    Located<String> into = pour.names(Connective.INTO).get(0);
    Stage maker = formula.stage(into.value()).orElse(result.stage());
    Finding finding = parcel.isAerated()
        ? INFO.at(into.span(), "`%s` is whipped, but not said to be at soft peak", into.value())
            .as(Severity.WARNING)
        : INFO.at(into.span(), "hot syrup meets `%s` before it is whipped", into.value());
    return finding
        .because("syrup wets the liquid and cooks the protein, and then no air goes in")
        .withRelated(subject.entry().origin(maker.name().span()), "made here")
        .withFixes(fix(subject, maker, result.stage(), pour).stream().toList());
  }

  private static Optional<Fix> fix(Subject subject, Stage maker, Stage pouring, Statement pour) {
    String state = State.SOFT_PEAK.word();
    Optional<Statement> lastWhip = maker.steps().stream()
        .filter(step -> step.is("whip") && subject.isWrittenHere(step.span()))
        .filter(
            step -> !maker.equals(pouring) || step.span().start() < pour.span().start())
        .reduce((one, later) -> later);
    if (lastWhip.isPresent() && !lastWhip.get().has(Connective.UNTIL)) {
      return Optional.of(
          Fix.insert("Whip it until " + state, lastWhip.get().span().end(), " until " + state));
    }
    String line = WrittenLines.step("whip", "on medium until " + state);
    WrittenLines lines = WrittenLines.of(subject);
    return (maker.equals(pouring)
            ? Optional.of(pour.span())
                .filter(subject::isWrittenHere)
                .map(span -> lines.above(span, line))
            : lines.behindSteps(maker, line))
        .map(edit -> new Fix("Whip it until " + state + " first", List.of(edit)));
  }
}
