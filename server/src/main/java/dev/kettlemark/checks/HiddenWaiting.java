package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Display;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reports a sheet for homes that does not tell in advance of a long wait.
 *
 * <p>Times count once for each step; what goes on side by side is added up, so the sum is never too short
 * for one pair of hands.
 */
public final class HiddenWaiting implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.hint("hidden-waiting", "a sheet does not tell in advance of a long wait");

  /** A note that speaks of hours, days or the night before tells of it. */
  private static final Pattern TOLD = Pattern.compile(
      "(?i)\\b(hours?|days?|overnight|night|the day before|next day)\\b|\\d\\s*h\\b");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return ShownSheet.of(subject)
        .filter(sheet -> sheet.isFor("home") && sheet.isEnglish())
        .filter(sheet -> sheet.notes().noneMatch(note -> TOLD.matcher(note.value()).find()))
        .filter(sheet ->
            seconds(sheet, true) >= subject.threshold(Threshold.LONG_WAIT).toSeconds())
        .map(sheet -> finding(sheet, seconds(sheet, true), seconds(sheet, false)))
        .stream()
        .toList();
  }

  private static Finding finding(ShownSheet sheet, double waits, double works) {
    String note = "The steps take " + Display.duration(works) + " of work by their times, and "
        + Display.duration(waits) + " of waiting.";
    return INFO.at(
            sheet.name().span(),
            "`%s` waits for %s, and no note says so",
            sheet.name().value(),
            Display.duration(waits))
        .because("the reader starts in the evening what is ready the day after")
        .withFix(sheet.addNote("Add a note with the times", note));
  }

  private static double seconds(ShownSheet sheet, boolean waiting) {
    return sheet.formulas().stream()
        .flatMap(HiddenWaiting::steps)
        .filter(step -> isWaiting(step) == waiting)
        .flatMap(step -> Stream.of(Connective.FOR, Connective.OVER)
            .flatMap(word -> step.figure(word, Unit.Dimension.TIME).stream()))
        .mapToDouble(time -> time.value().middleInBase().doubleValue())
        .sum();
  }

  private static Stream<Statement> steps(ComputedFormula formula) {
    return formula.formula().steps().filter(step -> !step.is(Verb.NEVER.word()));
  }

  private static boolean isWaiting(Statement step) {
    return step.is(Verb.SOAK.word())
        || step.is(Verb.HYDRATE.word())
        || Verb.of(step.word().value())
            .filter(verb -> verb.effect() == Verb.Effect.WAIT)
            .isPresent();
  }
}
