package dev.kettlemark.checks;

import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Display;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Reports a sheet for homes that does not tell in advance of a long wait.
 *
 * <p>Waits that go on side by side are added up. How long a boil takes no formula says, so no sum of the
 * whole is told.
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
        .filter(
            sheet -> sheet.notes().noneMatch(note -> TOLD.matcher(note.value()).find()))
        .filter(sheet -> waits(sheet) >= subject.threshold(Threshold.LONG_WAIT).toSeconds())
        .map(sheet -> finding(sheet, waits(sheet)))
        .stream()
        .toList();
  }

  private static Finding finding(ShownSheet sheet, double waits) {
    String time = Display.duration(waits);
    return INFO.at(
            sheet.name().span(),
            "`%s` waits for %s, and no note says so",
            sheet.name().value(),
            time)
        .because("the reader starts in the evening what is ready the day after")
        .withFix(sheet.addNote(
            "Add a note with the time", "The steps wait for " + time + " in all; plan for it."));
  }

  private static double waits(ShownSheet sheet) {
    return sheet.formulas().stream()
        .flatMap(formula -> formula.formula().steps())
        .filter(HiddenWaiting::isWaiting)
        .flatMap(step -> step.figure(Connective.FOR, Unit.Dimension.TIME).stream())
        .mapToDouble(time -> time.value().middleInBase().doubleValue())
        .sum();
  }

  private static boolean isWaiting(Statement step) {
    return step.is(Verb.SOAK.word())
        || step.is(Verb.HYDRATE.word())
        || Verb.of(step.word().value())
            .filter(verb -> verb.effect() == Verb.Effect.WAIT)
            .isPresent();
  }
}
