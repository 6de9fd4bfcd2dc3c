package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.text.TextEdit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reports nuts and other pieces that chill the hot mass they are folded into.
 *
 * <p>The heat balance tells by how much, and its band must lie wholly beyond the limit. What melts is
 * not meant: nobody warms chocolate drops.
 */
public final class ColdInclusions implements Rule {

  private static final RuleInfo INFO = RuleInfo.information(
      "cold-inclusions", "cold pieces chill the hot mass they are folded into");

  private static final Set<String> FOLDING = Set.of("fold", "mix");
  private static final Set<String> PIECES = Set.of("solid", "pieces");

  /** What is weighed in as warm as this is warmed on purpose; common practice, no source. */
  private static final Temperature WARMED = Temperature.ofCelsius(40);

  /** Below it nobody calls a mass hot; common practice, no source. */
  private static final Temperature HOT = Temperature.ofCelsius(60);

  private static final String WARM = "60 °C";

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(DoneStep::of)
        .filter(step -> step.is(FOLDING))
        .flatMap(step -> check(subject, step).stream())
        .toList();
  }

  private static Optional<Finding> check(Subject subject, DoneStep step) {
    Optional<StageParcel> mass = step.before().stream()
        .filter(parcel -> parcel.temperature().isWhollyAbove(HOT))
        .max(Comparator.comparing(parcel -> parcel.mass().orElse(Mass.ZERO)));
    List<AmountLine> cold = mass.isEmpty() ? List.of() : cold(step);
    return mass.filter(hot -> !cold.isEmpty())
        .flatMap(hot -> step.result()
            .merged()
            .filter(merged -> drop(hot.temperature(), merged)
                > subject.threshold(Threshold.INCLUSION_CHILL).celsius())
            .map(merged -> finding(subject, cold, hot.temperature(), merged)));
  }

  /** By how many degrees the mass cools at the least. */
  private static double drop(Band<Temperature> hot, Band<Temperature> merged) {
    return hot.low().celsius() - merged.high().celsius();
  }

  private static List<AmountLine> cold(DoneStep step) {
    return step.stage().stage().amounts().stream()
        .filter(line -> isPieces(step.formula(), line))
        .filter(line -> step.before().stream()
            .filter(parcel -> parcel.holds(line.ingredient().value()))
            .anyMatch(parcel -> parcel.temperature().isWhollyBelow(WARMED)))
        .toList();
  }

  private static boolean isPieces(ComputedFormula formula, AmountLine line) {
    return formula
        .material(line.ingredient().value())
        .flatMap(material -> material.ingredient())
        .filter(ingredient -> ingredient.form().filter(PIECES::contains).isPresent())
        .filter(ingredient -> ingredient.agent().melts().isEmpty())
        .isPresent();
  }

  private static Finding finding(
      Subject subject, List<AmountLine> cold, Band<Temperature> hot, Band<Temperature> merged) {
    AmountLine first = cold.get(0);
    Finding finding = INFO.at(
            first.ingredient().span(),
            "`%s`%s cold, and takes the mass from %s to about %s",
            first.ingredient().value(),
            cold.size() > 1 ? " and what is folded in with it are" : " is",
            Display.celsius(hot),
            Display.celsius(merged))
        .because("a chilled mass may stiffen before it is deposited; weigh the pieces in warm");
    boolean isWritten = cold.stream().allMatch(line -> subject.isWrittenHere(line.span()));
    return isWritten
        ? finding.withFix(
            new Fix("Warm to " + WARM, cold.stream().map(ColdInclusions::warmed).toList()))
        : finding;
  }

  private static TextEdit warmed(AmountLine line) {
    return line.at()
        .map(at -> new TextEdit(at.span(), WARM))
        .orElseGet(() -> TextEdit.insert(line.ingredient().span().end(), "  at " + WARM));
  }
}
