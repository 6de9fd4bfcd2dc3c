package dev.kettlemark.checks;

import dev.kettlemark.library.Origin;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Something that a rule found in a section.
 *
 * @param rule who found it
 * @param severity how much it matters here
 * @param span where, counted from the section's start
 * @param message what was found, with its values
 * @param note why it matters; empty where the message says it
 * @param fixes ways to mend it, best first
 * @param related other places that belong to it, the first few
 * @param accepted the reason for which it is accepted and listed all the same; empty where it is not
 */
public record Finding(
    RuleInfo rule,
    Severity severity,
    Span span,
    String message,
    String note,
    List<Fix> fixes,
    List<Related> related,
    Optional<String> accepted) {

  /** More ways than this to mend one thing only confuse. */
  private static final int MOST_FIXES = 4;

  /** One name written a thousand times must not list a thousand places a thousand times. */
  private static final int MOST_RELATED = 8;

  public Finding {
    fixes = List.copyOf(fixes.subList(0, Math.min(MOST_FIXES, fixes.size())));
    related = List.copyOf(related.subList(0, Math.min(MOST_RELATED, related.size())));
  }

  static Finding of(RuleInfo rule, Span span, String message) {
    return new Finding(
        rule, rule.severity(), span, message, "", List.of(), List.of(), Optional.empty());
  }

  /** The same finding with why it matters, one plain clause. */
  public Finding because(String why) {
    return new Finding(rule, severity, span, message, why, fixes, related, accepted);
  }

  public Finding as(Severity other) {
    return new Finding(rule, other, span, message, note, fixes, related, accepted);
  }

  /** The same finding as one that is worth knowing, since somebody accepts it for a reason. */
  Finding acceptedFor(String reason) {
    return new Finding(
        rule,
        Severity.INFORMATION,
        span,
        message + "; accepted: " + reason,
        note,
        fixes,
        related,
        Optional.of(reason));
  }

  public boolean isAccepted() {
    return accepted.isPresent();
  }

  public Finding withFix(Fix fix) {
    List<Fix> more = new ArrayList<>(fixes);
    more.add(fix);
    return new Finding(rule, severity, span, message, note, more, related, accepted);
  }

  public Finding withFixes(List<Fix> others) {
    Finding result = this;
    for (Fix fix : others) {
      result = result.withFix(fix);
    }
    return result;
  }

  public Finding withRelated(Origin origin, String what) {
    List<Related> more = new ArrayList<>(related);
    more.add(new Related(origin, what));
    return new Finding(rule, severity, span, message, note, fixes, more, accepted);
  }
}
