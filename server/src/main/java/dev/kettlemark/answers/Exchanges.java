package dev.kettlemark.answers;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Located;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hipparchus.fraction.BigFraction;

/** What all exchanges of one amount for another share. */
final class Exchanges {

  private Exchanges() {}

  static BigFraction exact(double value) {
    BigDecimal decimal = BigDecimal.valueOf(value);
    return decimal.scale() <= 0
        ? new BigFraction(decimal.toBigIntegerExact())
        : new BigFraction(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()));
  }

  /** The amount of a line whose figure is its own, as written. */
  static String written(LineAmount amount) {
    return Figure.exact(amount, amount.share().orElse(BigFraction.ZERO)).shown();
  }

  static Value share(String word, BigFraction share) {
    return Value.exact(word, Ratio.ofFraction(share.doubleValue()));
  }

  /** What is said of the lines of water that take up a difference, such as {@code , water 8.82 %}. */
  static String told(ComputedFormula formula, List<Change> rest) {
    StringBuilder told = new StringBuilder();
    for (Change change : rest) {
      if (change instanceof Change.Weigh weigh) {
        told.append(", ")
            .append(name(formula, weigh.line()))
            .append(' ')
            .append(weigh.figure().shown());
      } else if (change instanceof Change.Add add) {
        told.append(", ")
            .append(add.material().name())
            .append(' ')
            .append(add.figure().shown());
      }
    }
    return told.toString();
  }

  /** Allergens that come in with an exchange, such as {@code , brings the allergen soy}. */
  static String allergens(Optional<Material> from, Material to) {
    Set<String> known = from.map(Exchanges::allergens).orElse(Set.of());
    List<String> fresh =
        allergens(to).stream().filter(word -> !known.contains(word)).sorted().toList();
    return fresh.isEmpty() ? "" : ", brings the allergen " + String.join(", ", fresh);
  }

  private static Set<String> allergens(Material material) {
    return material
        .ingredient()
        .map(ingredient -> ingredient.facts().wordsOf("allergen").stream()
            .map(Located::value)
            .collect(Collectors.toUnmodifiableSet()))
        .orElse(Set.of());
  }

  static String name(ComputedFormula formula, int line) {
    return formula.amounts().lines().get(line).line().ingredient().value();
  }

  static <T> Outcome<T> boundLine(LineAmount amount) {
    AmountLine line = amount.line();
    return amount.share().isKnown()
        ? Outcome.unknown(
            Reason.CONTRADICTION,
            "the amount of `%s` hangs on others and is %s of the charge only as long as they stay",
            line.ingredient().value(),
            Display.percent(amount.share().orElse(BigFraction.ZERO)))
        : Outcome.unknown(
            Reason.DEPENDS_ON_UNKNOWN,
            "the amount of `%s` is not known",
            line.ingredient().value());
  }
}
