package dev.kettlemark.checks;

import dev.kettlemark.analysis.FormulaVersion;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports a sheet that was issued for another version of what it shows.
 *
 * <p>Its notes were written for the older figures. A sheet without a {@code version} is not judged.
 */
public final class OutdatedSheet implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("outdated-sheet", "a sheet was issued for another version");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return ShownSheet.of(subject).stream().flatMap(OutdatedSheet::check).toList();
  }

  private static Stream<Finding> check(ShownSheet sheet) {
    Optional<BigFraction> holding = version(sheet);
    Optional<Located<BigFraction>> issued = issued(sheet.sheet().facts());
    return issued
        .filter(number -> holding.filter(now -> !now.equals(number.value())).isPresent())
        .map(number -> finding(sheet, number, holding.orElse(number.value())))
        .stream();
  }

  private static Finding finding(
      ShownSheet sheet, Located<BigFraction> issued, BigFraction holding) {
    String now = number(holding);
    return INFO.at(
            issued.span(),
            "issued for version %s, and `%s` is at version %s",
            number(issued.value()),
            sheet.name().value(),
            now)
        .because("what its notes say was written for other figures")
        .withRelated(sheet.entry().origin(sheet.shown().name().span()), "what it shows")
        .withFix(Fix.replace(
            "Issue it anew for version " + now + ", its notes being read again",
            issued.span(),
            now));
  }

  /** The version of what is shown; a product without one has that of its centre. */
  private static Optional<BigFraction> version(ShownSheet sheet) {
    return Stream.concat(
            Stream.of(sheet.facts()),
            sheet.formulas().stream().limit(1).map(formula -> formula.formula().facts()))
        .flatMap(facts -> FormulaVersion.of(facts).stream())
        .flatMap(version -> version.number().stream())
        .findFirst();
  }

  private static Optional<Located<BigFraction>> issued(Facts facts) {
    return facts
        .first("version")
        .flatMap(line -> FormulaVersion.number(line)
            .map(number -> new Located<>(number, place(line.objects(), line.span()))));
  }

  private static Span place(List<Located<Operand>> operands, Span line) {
    return operands.stream()
        .filter(operand -> operand.value() instanceof Operand.Figure)
        .map(Located::span)
        .findFirst()
        .orElse(line);
  }

  private static String number(BigFraction version) {
    return Display.trimmed(version.doubleValue(), 3);
  }
}
