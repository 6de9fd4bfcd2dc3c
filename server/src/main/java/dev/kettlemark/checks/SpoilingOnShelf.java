package dev.kettlemark.checks;

import dev.kettlemark.model.Located;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.science.GrowthLimit;
import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;

/**
 * Reports a piece that is to keep in a room, and is so wet that moulds grow on it.
 *
 * <p>Below a water activity of 0.60 nothing grows. Where so much water lets germs grow that make people
 * ill, another rule speaks.
 */
public final class SpoilingOnShelf implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
          "spoiling-on-shelf", "a piece is too wet to keep as long as it says in a room")
      .forSafety();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return RoomShelf.of(subject).stream()
        .flatMap(shelf -> shelf
            .parts()
            .filter(part -> !PerishableInRoom.tells(subject, shelf, part))
            .flatMap(part -> check(subject, shelf, part).stream()))
        .toList();
  }

  private static Optional<Finding> check(Subject subject, RoomShelf shelf, Located<String> name) {
    Ratio limit = subject.threshold(Threshold.SHELF_ACTIVITY);
    boolean isShort =
        shelf.seconds() <= subject.threshold(Threshold.SHORT_SHELF).toSeconds();
    return PartActivity.of(subject, name.value())
        .filter(activity -> !isShort && activity.isWhollyAbove(limit))
        .map(activity -> finding(subject, shelf, name, activity));
  }

  /** Jellies and creams of 0.65 to 0.80 are sold everywhere; they just do not keep for long. */
  private static Severity severity(Subject subject, RoomShelf shelf, Band<Ratio> activity) {
    boolean isLong = shelf.seconds() > subject.threshold(Threshold.LONG_SHELF).toSeconds();
    return isLong || activity.isWhollyAbove(GrowthLimit.MOST_MOULDS.leastActivity())
        ? Severity.WARNING
        : Severity.INFORMATION;
  }

  private static Finding finding(
      Subject subject, RoomShelf shelf, Located<String> name, Band<Ratio> activity) {
    Span time = shelf.time().span();
    return INFO.at(
            time,
            "`%s` has a water activity of %s, too wet for %s in a room",
            name.value(),
            Display.activity(activity),
            Columns.shown(time.of(subject.text())))
        .because("moulds and yeasts that tolerate sugar grow from 0.60 to 0.65 on; less water, or"
            + " more glucose, fructose or glycerol in place of sucrose lower it")
        .withRelated(subject.entry().origin(name.span()), "what is so wet")
        .as(severity(subject, shelf, activity))
        .withFix(Fix.replace("Shorten the shelf life to 2 weeks", time, "2 weeks"))
        .withFix(shelf.keptCold());
  }
}
