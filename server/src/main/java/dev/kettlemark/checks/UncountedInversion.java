package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.Inversion;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/**
 * Tells of acid that is boiled with sucrose: it splits some, and the amounts do not show it.
 *
 * <p>How much is known to a factor of two for cream of tartar, and not at all for stronger acids.
 */
public final class UncountedInversion implements Rule {

  private static final RuleInfo INFO = RuleInfo.information(
      "uncounted-inversion", "acid splits sucrose in the boil, and the amounts do not show it");

  /** Below this heat an ordinary boil splits little; common practice, no source. */
  private static final Temperature FAST = Temperature.ofCelsius(110);

  private static final String TARTAR = "cream-of-tartar";

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(formula -> CookStep.of(formula)
            .filter(cook -> cook.band().isWhollyAbove(FAST))
            .flatMap(cook -> check(subject, formula, cook)))
        .distinct()
        .toList();
  }

  private static Stream<Finding> check(Subject subject, ComputedFormula formula, CookStep cook) {
    InThePan pan = InThePan.of(formula, cook);
    double sucrose = InThePan.share(formula, pan.lines(), Component.SUCROSE);
    return pan.of(formula, UncountedInversion::isAcid).stream()
        .filter(line -> sucrose > 0)
        .map(line -> finding(subject, line, sucrose, cook));
  }

  static boolean isAcid(Ingredient ingredient) {
    return ingredient.hasRole("acidulant");
  }

  private static Finding finding(
      Subject subject, Amounts.LineAmount line, double sucrose, CookStep cook) {
    String name = InThePan.name(line);
    double share = line.share().map(BigFraction::doubleValue).orElse(0.0);
    Optional<Band<Ratio>> split = name.equals(TARTAR)
        ? Inversion.byCreamOfTartar(Ratio.ofFraction(share / sucrose)).toOptional()
        : Optional.empty();
    return INFO.at(
            line.line().ingredient().span(),
            "`%s` splits %s of the sucrose on the way to %s",
            name,
            split
                .map(band -> Display.fixed(band.low().percent(), 0) + "–"
                    + Display.fixed(band.high().percent(), 0) + " %")
                .orElse("nobody knows how much"),
            Display.celsius(cook.middle()))
        .because("what is split acts as a doctor that the figures do not count: the mass is softer,"
            + " stickier and browns sooner")
        .withRelated(subject.entry().origin(cook.target().span()), "the cook");
  }
}
