package dev.kettlemark.checks;

import dev.kettlemark.quantity.Display;
import java.util.List;

/** Reports a total that rounding keeps a little off the whole. */
public final class TotalJustOff implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.hint("total-just-off", "the lines miss 100 % by rounding");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject
        .formula()
        .filter(TotalOff::hasTotal)
        .filter(computed -> TotalOff.gap(computed).signum() != 0)
        .filter(computed -> !TotalOff.isOff(subject, computed))
        .map(computed -> INFO.at(
                computed.formula().name().span(),
                "the lines add up to %s",
                Display.percent(computed.amounts().total()))
            .because("it is rounding, but whoever adds them up in print will ask")
            .withFixes(
                TotalOff.onLargest(subject, ChargeLines.of(computed), TotalOff.gap(computed))
                    .stream()
                    .toList()))
        .stream()
        .toList();
  }
}
