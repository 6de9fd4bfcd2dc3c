package dev.kettlemark.model;

import dev.kettlemark.text.Span;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A line that accepts what a rule finds: {@code accept RULE "reason" until 2027-03-01}.
 *
 * @param rule the rule's id as written
 * @param reason why what it finds is wanted; empty where none is written
 * @param until the last day on which it holds
 * @param scope where it holds: the lines of its stage, or empty for the whole section
 * @param span the whole line
 */
public record Acceptance(
    Located<String> rule,
    Optional<Located<String>> reason,
    Optional<LocalDate> until,
    Optional<Span> scope,
    Span span) {

  /** The fact word that it starts with. */
  public static final String WORD = "accept";

  /** What stands for a reason until somebody writes one. */
  public static final String UNFILLED = "reason";

  /** Reads a line; empty where it names no rule. */
  public static Optional<Acceptance> of(Statement line, Optional<Span> scope) {
    return line.objectNames().stream()
        .findFirst()
        .map(rule -> new Acceptance(
            rule,
            line.objects().stream()
                .flatMap(operand -> operand.value() instanceof Operand.Text text
                    ? Optional.of(new Located<>(text.text(), operand.span())).stream()
                    : Optional.<Located<String>>empty().stream())
                .findFirst(),
            line.days(Connective.UNTIL).stream().findFirst().map(Located::value),
            scope,
            line.span()));
  }

  /** Whether somebody wrote why. */
  public boolean hasReason() {
    return reason
        .map(text -> text.value().strip())
        .filter(text -> !text.isEmpty() && !text.equals(UNFILLED))
        .isPresent();
  }

  /** The same without bounds within a section. */
  public Acceptance everywhere() {
    return new Acceptance(rule, reason, until, Optional.empty(), span);
  }

  /** The reason as written, or nothing. */
  public String reasonText() {
    return reason.map(Located::value).map(String::strip).orElse("");
  }

  /** Whether its last day lies behind another. */
  public boolean hasLapsed(LocalDate day) {
    return until.filter(last -> last.isBefore(day)).isPresent();
  }

  /** Whether it speaks of a rule and of a place in its section. */
  public boolean covers(String ruleId, Span place) {
    return rule.value().equals(ruleId)
        && scope
            .filter(lines -> place.start() < lines.start() || lines.end() < place.start())
            .isEmpty();
  }
}
