package dev.kettlemark.checks;

import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.State;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Display;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Reports a whipped mass that stands still for long before it is deposited.
 *
 * <p>A line that keeps the whisk going or the mass warm is what the trade does instead, and silences it.
 */
public final class FoamLeftStanding implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("foam-left-standing", "a whipped mass stands still before it is deposited");

  private static final Set<String> DEPOSITING = Set.of("deposit", "pipe", "spread");
  private static final Set<String> STANDING = Set.of("stand", "rest", "hold");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(DoneStep::of)
        .filter(step -> step.is(DEPOSITING))
        .filter(step -> step.before().stream().anyMatch(FoamLeftStanding::isOpenFoam))
        .flatMap(step -> standing(subject, step))
        .distinct()
        .map(step -> finding(subject, step))
        .toList();
  }

  /** A foam that has set already is no longer harmed by standing. */
  private static boolean isOpenFoam(StageParcel parcel) {
    return parcel.isAerated() && !parcel.has(State.SET);
  }

  private static Stream<DoneStep> standing(Subject subject, DoneStep deposit) {
    List<DoneStep> since = deposit.since(Set.of("whip"));
    Duration most = subject.threshold(Threshold.FOAM_STANDING);
    return since.stream().map(DoneStep::step).anyMatch(FoamLeftStanding::keeps)
        ? Stream.empty()
        : since.stream()
            .filter(step -> step.is(STANDING) && !step.step().has(Connective.WHILE))
            .filter(step -> step.before().stream().anyMatch(StageParcel::isAerated))
            .filter(step -> step.seconds(Connective.FOR)
                .filter(seconds -> seconds > most.toSeconds())
                .isPresent());
  }

  private static boolean keeps(Statement step) {
    return step.is("keep")
        && (step.objectNames().stream().anyMatch(word -> word.value().equals("whisking"))
            || step.figure(Connective.ABOVE, Unit.Dimension.TEMPERATURE).isPresent());
  }

  private static Finding finding(Subject subject, DoneStep standing) {
    Statement step = standing.step();
    Optional<Fix> fix = Optional.of(step)
        .filter(written -> subject.isWrittenHere(written.span()))
        .map(written -> new Fix(
            "Keep whisking until deposit",
            List.of(WrittenLines.of(subject)
                .above(written.span(), WrittenLines.step("keep", "whisking until deposit")))));
    Finding finding = INFO.at(
            step.word().span(),
            "the whipped mass stands still for %s before it is deposited",
            Display.duration(standing.seconds(Connective.FOR).orElse(0.0)))
        .because("a foam drains, begins to set, and holds the whisk fast")
        .withFixes(fix.stream().toList());
    return OtherPlace.step(finding, subject, standing.formula(), Verb.WHIP.word(), "whipped here");
  }
}
