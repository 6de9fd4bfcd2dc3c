package dev.kettlemark.checks;

import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import java.util.List;

/**
 * Reports a cook temperature at which sugar burns.
 *
 * <p>Most often the digits are °F with the wrong scale behind them. Burning sugar smokes, can catch
 * fire, and burns the skin deeply.
 */
public final class BurningSyrup implements Rule {

  private static final RuleInfo INFO = RuleInfo.error(
          "burning-syrup", "the sugar would burn at this temperature")
      .forSafety();

  /**
   * The darkest caramel of the trade; handbook charts, as in {@code SugarStage.DARK_CARAMEL}. Sugar burns
   * in every house alike, so none may set it.
   */
  private static final Temperature DARKEST = Temperature.ofCelsius(190);

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(CookStep::of)
        .filter(cook -> cook.band().isWhollyAbove(DARKEST))
        .map(cook -> finding(subject, cook))
        .toList();
  }

  private static Finding finding(Subject subject, CookStep cook) {
    Finding finding = INFO.at(
            cook.target().span(), "sugar burns at %s", Display.celsius(cook.band()))
        .because("burning sugar can catch fire, and hot sugar burns the skin deeply");
    OtherScale other = OtherScale.of(cook.target());
    boolean isPlausible = subject.threshold(Threshold.USUAL_COOK).contains(other.temperature());
    return isPlausible && subject.isWrittenHere(cook.target().span())
        ? finding.withFixes(other.fixes(subject.text()))
        : finding;
  }
}
