package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Display;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reports a density that a step checks for and that such a mass does not have.
 *
 * <p>An error where the mass would be denser than without any air, or lighter than half of the lightest
 * that its kind is whipped to; a warning where it lies outside the usual by more than the slack. What the
 * formula expects in its facts is held against the models by {@link ExpectationOff}.
 */
public final class DensityOutOfKind implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "density-out-of-kind", "a step checks for a density that such a mass does not have");

  /** Five percent: what a cup and the model of a mass without air may be off by together. */
  private static final double DENSER = 1.05;

  private static final double FAR_LIGHTER = 0.5;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(formula ->
            checked(formula).flatMap(written -> check(subject, formula, written).stream()))
        .toList();
  }

  /** A written density, and the mass that it is told of. */
  private record Written(Located<Quantity> figure, StageParcel mass) {}

  /** What is checked is the mass before the step, since the step brings it to that density. */
  private static Stream<Written> checked(ComputedFormula formula) {
    return formula.process().stages().stream()
        .flatMap(stage -> stage.steps().stream())
        .filter(step -> step.step().is("check"))
        .flatMap(step -> BulkDensity.figure(step.step())
            .flatMap(figure ->
                BulkDensity.measured(step.before()).map(mass -> new Written(figure, mass)))
            .stream());
  }

  private static Optional<Finding> check(
      Subject subject, ComputedFormula formula, Written written) {
    MassFigures figures = MassFigures.of(written.mass(), formula.kitchen());
    Optional<Band<Density>> expected = BulkDensity.band(written.figure().value());
    Optional<Density> withoutAir = figures.densityWithoutAir().toOptional();
    Optional<Band<Density>> usual = figures.density().toOptional();
    if (expected.isEmpty() || withoutAir.isEmpty() || usual.isEmpty()) {
      return Optional.empty();
    }
    double low = expected.get().low().gramsPerMillilitre();
    double high = expected.get().high().gramsPerMillilitre();
    if (low > withoutAir.get().gramsPerMillilitre() * DENSER) {
      return Optional.of(finding(
          subject,
          written,
          Severity.ERROR,
          "without any air it is " + Display.density(Band.of(withoutAir.get())),
          usual.get()));
    }
    double slack = subject.threshold(Threshold.DENSITY_SLACK).fraction();
    double lightest = usual.get().low().gramsPerMillilitre();
    double densest = usual.get().high().gramsPerMillilitre();
    boolean isOff = high < lightest * (1 - slack) || low > densest * (1 + slack);
    return written.mass().isAerated() && isOff
        ? Optional.of(finding(
            subject,
            written,
            high < lightest * FAR_LIGHTER ? Severity.ERROR : Severity.WARNING,
            "such a mass is usually whipped to " + Display.density(usual.get()),
            usual.get()))
        : Optional.empty();
  }

  private static Finding finding(
      Subject subject, Written written, Severity severity, String usual, Band<Density> band) {
    Finding finding = INFO.at(
            written.figure().span(),
            severity == Severity.ERROR
                ? "%s cannot be the density of this mass"
                : "%s is far from the density of such a mass",
            Columns.shown(written.figure().span().of(subject.text())))
        .as(severity)
        .because(usual + "; moulds and frames are filled by this figure");
    String figure = Display.density(band);
    return subject.isWrittenHere(written.figure().span())
        ? finding.withFix(Fix.replace("Write `" + figure + "`", written.figure().span(), figure))
        : finding;
  }
}
