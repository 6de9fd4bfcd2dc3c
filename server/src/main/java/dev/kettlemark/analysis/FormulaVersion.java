package dev.kettlemark.analysis;

import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.quantity.Display;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/**
 * {@code version 6 on 2026-03-05}.
 *
 * @param number as counted by the kitchen; empty where the line gives none
 * @param since the day from which it holds; empty where the line gives none
 * @param line as written
 */
public record FormulaVersion(
    Optional<BigFraction> number, Optional<LocalDate> since, Statement line) {

  public static Optional<FormulaVersion> of(Facts facts) {
    return facts.first("version").map(FormulaVersion::of);
  }

  private static FormulaVersion of(Statement line) {
    return new FormulaVersion(number(line), day(line), line);
  }

  /** The plain number that a line starts with. */
  public static Optional<BigFraction> number(Statement line) {
    return range(line).map(Quantity::middle);
  }

  /** The first figure of a line, with or without a unit. */
  static Optional<Quantity> range(Statement line) {
    return line.objects().stream()
        .flatMap(operand -> operand.value() instanceof Operand.Figure figure
            ? Stream.of(figure.quantity())
            : Stream.empty())
        .findFirst();
  }

  /** The first day behind {@code on}. */
  public static Optional<LocalDate> day(Statement line) {
    return line.clauses().stream()
        .filter(clause -> clause.word() == Connective.ON)
        .flatMap(clause -> clause.operands().stream())
        .map(Located::value)
        .flatMap(
            operand -> operand instanceof Operand.Day day ? Stream.of(day.date()) : Stream.empty())
        .findFirst();
  }

  /** {@code version 6 of 2026-03-05}, as far as it is known. */
  public String shown() {
    return "version"
        + number.map(n -> " " + Display.trimmed(n.doubleValue(), 3)).orElse("")
        + since.map(day -> " of " + day).orElse("");
  }
}
