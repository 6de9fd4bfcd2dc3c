package dev.kettlemark.checks;

import dev.kettlemark.analysis.Boiling;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reports a mass that is to get hotter in a water bath than water gets. */
public final class OverheatedWaterBath implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("overheated-water-bath", "no water bath makes a mass so hot");

  private static final Set<String> BATHS = Set.of("water-bath", "bain-marie");

  private static final String DIRECT = "direct-heat";

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Temperature limit = subject.threshold(Threshold.WATER_BATH);
    return subject.formula().stream()
        .flatMap(formula -> formula.formula().steps())
        .flatMap(step -> step.names(Connective.ON).stream()
            .filter(name -> BATHS.contains(name.value()))
            .flatMap(bath -> figure(step)
                .filter(figure -> Boiling.band(figure.value()).isWhollyAbove(limit))
                .map(figure -> finding(subject, bath, figure, limit))
                .stream()))
        .toList();
  }

  private static Optional<Located<Quantity>> figure(Statement step) {
    return step.figure(Connective.TO, Unit.Dimension.TEMPERATURE)
        .or(() -> step.figure(Connective.AT, Unit.Dimension.TEMPERATURE));
  }

  private static Finding finding(
      Subject subject, Located<String> bath, Located<Quantity> figure, Temperature limit) {
    Finding finding = INFO.at(
            figure.span(),
            "`%s` does not bring a mass to %s",
            bath.value(),
            Display.celsius(Boiling.band(figure.value())))
        .because("the bath boils at 100 °C and the mass stays behind it, so the step never ends");
    return subject.isWrittenHere(figure.span())
        ? finding
            .withFix(Fix.replace("Heat it on `" + DIRECT + "`", bath.span(), DIRECT))
            .withFix(Fix.replace(
                "Lower it to " + Display.celsius(limit), figure.span(), Display.celsius(limit)))
        : finding;
  }
}
