package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.UseRange;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.text.Excerpt;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports a share of the charge that nobody can mean: more than the whole, or many times the highest
 * usual dose.
 *
 * <p>Most often the unit is wrong, percent for parts per million, or the point. Doses of a liquid are
 * left to {@link GumOfCharge}.
 */
public final class ImpossibleDose implements Rule {

  private static final RuleInfo INFO = RuleInfo.error(
      "impossible-dose", "a line takes more than the whole, or many times the usual dose");

  /** A point that slipped, by one place to three. */
  private static final List<Integer> SLIPS = List.of(10, 100, 1000);

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Ratio most = subject.threshold(Threshold.IMPOSSIBLE_DOSE);
    return subject.formula().stream()
        .flatMap(computed -> computed.amounts().lines().stream()
            .filter(amount -> !computed.formula().inherits(amount.line().span()))
            .filter(amount -> ChargeLines.isOfCharge(computed, amount.line()))
            .flatMap(amount -> amount
                .share()
                .toOptional()
                .flatMap(share -> finding(subject, computed, amount.line(), share, most))
                .stream()))
        .toList();
  }

  /** Whether one line alone is more than the whole, which then is what is wrong with the total. */
  static boolean isOverWhole(ComputedFormula computed) {
    return computed.amounts().lines().stream()
        .filter(amount -> ChargeLines.isOfCharge(computed, amount.line()))
        .anyMatch(ImpossibleDose::isOverWhole);
  }

  private static boolean isOverWhole(Amounts.LineAmount amount) {
    return amount.share().toOptional().filter(ImpossibleDose::isOverWhole).isPresent();
  }

  private static boolean isOverWhole(BigFraction share) {
    return share.compareTo(BigFraction.ONE) > 0;
  }

  private static Optional<Finding> finding(
      Subject subject, ComputedFormula computed, AmountLine line, BigFraction share, Ratio most) {
    Optional<UseRange> usual = usual(computed, line);
    boolean isFarAbove = usual
        .filter(use -> use.high().times(most).fraction() < share.doubleValue())
        .isPresent();
    if (!isOverWhole(share) && !isFarAbove) {
      return Optional.empty();
    }
    String written = Columns.shown(line.measure().span().of(subject.text()));
    String grams = computed
        .amounts()
        .charge()
        .map(charge -> ", " + mass(charge.multiply(share)) + " in this batch")
        .orElse("");
    String than = isOverWhole(share)
        ? "more than the whole"
        : "many times the usual " + usual.map(ImpossibleDose::range).orElse("");
    return Optional.of(INFO.at(
            line.measure().span(),
            "%s of %s%s, is %s",
            written,
            Excerpt.of(line.ingredient().value()),
            grams,
            than)
        .because("the unit or the point is wrong, and every weight of the batch with it")
        .withFixes(fixes(subject, line, share, others(computed, line), usual)));
  }

  /** The highest dose, if all usual doses are of the charge or of the finished weight. */
  private static Optional<UseRange> usual(ComputedFormula computed, AmountLine line) {
    List<UseRange> uses = computed
        .material(line.ingredient().value())
        .flatMap(material -> material.ingredient())
        .map(ingredient -> ingredient.uses())
        .orElse(List.of());
    return uses.stream().allMatch(use -> !(use.basis() instanceof Basis.Named))
        ? uses.stream()
            .reduce((one, other) -> one.high().compareTo(other.high()) >= 0 ? one : other)
        : Optional.empty();
  }

  private static String range(UseRange use) {
    return Display.range(use.low(), use.high());
  }

  /** Each other unit or place of the point that has room; with a usual dose, one that is usual. */
  private static List<Fix> fixes(
      Subject subject,
      AmountLine line,
      BigFraction share,
      BigFraction others,
      Optional<UseRange> usual) {
    List<Fix> fixes = new ArrayList<>();
    Optional<Quantity> figure =
        line.written().filter(f -> f.unit().filter(Unit.PERCENT::equals).isPresent());
    if (figure.isEmpty()) {
      return fixes;
    }
    BigFraction value = figure.get().low();
    BigFraction ppm = value.multiply(Unit.PPM.factor());
    if (usual.filter(use -> isPlausible(use, ppm)).isPresent()) {
      fixes.add(written(subject, line, plain(value) + " ppm"));
      fixes.add(written(subject, line, plain(ppm.multiply(100)) + " %"));
    }
    for (int slip : SLIPS) {
      BigFraction moved = share.divide(slip);
      boolean isDose = usual.map(use -> isPlausible(use, moved)).orElse(slip < 1000);
      if (isDose && moved.add(others).compareTo(BigFraction.ONE) <= 0) {
        fixes.add(written(subject, line, Display.percent(moved)));
      }
    }
    return fixes;
  }

  /** What the other lines hold that is a figure, and not the rest. */
  private static BigFraction others(ComputedFormula computed, AmountLine line) {
    return computed.amounts().lines().stream()
        .filter(other -> !other.line().equals(line))
        .filter(other -> !(other.line().measure().value() instanceof Measure.Sufficient))
        .map(other -> other.share().orElse(BigFraction.ZERO))
        .reduce(BigFraction.ZERO, BigFraction::add);
  }

  private static boolean isPlausible(UseRange use, BigFraction share) {
    return use.contains(Ratio.ofFraction(share.doubleValue()));
  }

  private static Fix written(Subject subject, AmountLine line, String measure) {
    String old = line.measure().span().of(subject.text());
    int of = old.indexOf(" of ");
    String whole = of < 0 ? measure : measure + old.substring(of);
    return new Fix(
        "Write `" + measure + "`",
        List.of(new Columns(subject.section()).replaceMeasure(line, whole)));
  }

  private static String plain(BigFraction value) {
    return Display.trimmed(value.doubleValue(), 6);
  }

  private static String mass(BigFraction grams) {
    return Display.mass(Mass.ofGrams(grams.doubleValue()));
  }
}
