package dev.kettlemark.checks;

import dev.kettlemark.analysis.FormulaVersion;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.syntax.Lexeme;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * Reports a specification that should have been looked at again.
 *
 * <p>Suppliers change strength and composition without changing the name.
 */
public final class OverdueReview implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.information("overdue-review", "the figures of an ingredient are due for a review");

  private static final long SECONDS_PER_DAY = 86_400;

  /** A longer interval is a slip of the pen. */
  private static final long LONGEST_DAYS = 36_525;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return OwnIngredient.of(subject)
        .flatMap(own -> own.facts().first("reviewed"))
        .flatMap(fact -> due(fact)
            .filter(day -> day.isBefore(subject.today()))
            .map(day -> INFO.at(
                    fact.span(),
                    "the figures of `%s` were due for a review on %s",
                    subject.declaration().map(d -> d.name().value()).orElse(""),
                    day.toString())
                .because("suppliers change strength and composition without changing the name")
                .withFixes(reviewed(subject, fact))))
        .stream()
        .toList();
  }

  /** For when it has been done. */
  private static List<Fix> reviewed(Subject subject, Statement fact) {
    String today = subject.today().toString();
    return subject.section().lexemes().stream()
        .filter(lexeme -> lexeme.kind() == Lexeme.Kind.DATE && fact.span().contains(lexeme.span()))
        .limit(1)
        .map(day -> Fix.replace("Write that it was reviewed on " + today, day.span(), today))
        .toList();
  }

  /** The day by which the figures are to be looked at again; empty without an interval. */
  private static Optional<LocalDate> due(Statement fact) {
    return FormulaVersion.day(fact)
        .flatMap(day -> fact.figure(Unit.Dimension.TIME)
            .map(Located::value)
            .flatMap(interval -> due(day, interval)));
  }

  private static Optional<LocalDate> due(LocalDate day, Quantity interval) {
    OptionalLong days = days(interval);
    if (days.isEmpty()) {
      return Optional.empty();
    }
    boolean inMonths = interval.unit().filter(unit -> unit == Unit.MONTHS).isPresent();
    return Optional.of(
        inMonths ? day.plusMonths(interval.middle().longValue()) : day.plusDays(days.getAsLong()));
  }

  private static OptionalLong days(Quantity interval) {
    double days = interval.middleInBase().doubleValue() / SECONDS_PER_DAY;
    return days > 0 && days <= LONGEST_DAYS ? OptionalLong.of((long) days) : OptionalLong.empty();
  }
}
