package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.scaling.WeighingList;
import dev.kettlemark.text.Excerpt;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports digits of a percentage that no scale of the house shows.
 *
 * <p>Hundredths of a percent are how formulas are written and never reported.
 */
public final class UnreachableDigits implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.hint("unreachable-digits", "a percentage has digits that no scale shows");

  /** Formulas are written in hundredths of a percent; common practice, no source. */
  private static final int USUAL_DECIMALS = 2;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(computed -> computed.amounts().charge().stream()
            .flatMap(charge -> ChargeLines.of(computed).all().stream()
                .flatMap(amount -> amount
                    .share()
                    .toOptional()
                    .flatMap(share -> finding(subject, computed, amount.line(), share, charge))
                    .stream())))
        .toList();
  }

  private static Optional<Finding> finding(
      Subject subject,
      ComputedFormula computed,
      AmountLine line,
      BigFraction share,
      BigFraction charge) {
    Optional<Quantity> figure = line.written()
        .filter(f -> f.unit().filter(Unit.PERCENT::equals).isPresent())
        .filter(f -> f.decimals() > USUAL_DECIMALS);
    if (figure.isEmpty()) {
      return Optional.empty();
    }
    Optional<House.Scale> scale = WeighingList.scaleFor(
        computed.kitchen().house().map(House::scales).orElse(List.of()), charge.multiply(share));
    if (scale.isEmpty()) {
      return Optional.empty();
    }
    int decimals = reached(charge, scale.get().step(), figure.get().decimals());
    if (decimals == figure.get().decimals()
        || isWhole(figure.get().low().multiply(new BigFraction(10).pow(decimals)))) {
      return Optional.empty();
    }
    String rounded = Display.fixed(figure.get().low(), decimals) + " %";
    return Optional.of(OtherPlace.tool(
            INFO.at(
                    line.measure().span(),
                    "the last digit of %s of %s is %s, and scale `%s` reads %s",
                    Columns.shown(line.measure().span().of(subject.text())),
                    Excerpt.of(line.ingredient().value()),
                    mass(place(charge, figure.get().decimals())),
                    scale.get().name().value(),
                    Display.trimmed(scale.get().step().doubleValue(), 4) + " g")
                .because("nobody can weigh it"),
            subject,
            scale.get().name().value())
        .withFix(new Fix(
            "Round to `" + rounded + "`",
            List.of(ChargeLines.rewritten(subject.text(), line, share, decimals)))));
  }

  /** The most decimals of which the last one weighs a step of the scale. */
  private static int reached(BigFraction charge, BigFraction step, int written) {
    int decimals = USUAL_DECIMALS;
    while (decimals < written && place(charge, decimals + 1).compareTo(step) >= 0) {
      decimals++;
    }
    return decimals;
  }

  /** What one of the last of so many decimals of a percentage weighs, in grams. */
  private static BigFraction place(BigFraction charge, int decimals) {
    return charge.multiply(Unit.PERCENT.factor()).divide(new BigFraction(10).pow(decimals));
  }

  private static boolean isWhole(BigFraction value) {
    return value.getDenominator().equals(BigInteger.ONE);
  }

  private static String mass(BigFraction grams) {
    return Display.mass(Mass.ofGrams(grams.doubleValue()));
  }
}
