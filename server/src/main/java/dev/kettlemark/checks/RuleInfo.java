package dev.kettlemark.checks;

import dev.kettlemark.text.Span;
import java.util.Arrays;
import java.util.Locale;

/**
 * What is known of a rule before it runs.
 *
 * @param id words that name the defect, stable for ever
 * @param severity of its findings where the rule does not say otherwise
 * @param summary one line, lower case, no full stop
 * @param safety whether somebody may get hurt: what it finds stays listed even when it is accepted
 * @param acceptable whether what it finds may be accepted with a reason
 */
public record RuleInfo(
    String id, Severity severity, String summary, boolean safety, boolean acceptable) {

  /** A name, a path or a whole sentence stays below it. */
  private static final int LONGEST_VALUE = 400;

  public static RuleInfo error(String id, String summary) {
    return new RuleInfo(id, Severity.ERROR, summary, false, true);
  }

  public static RuleInfo warning(String id, String summary) {
    return new RuleInfo(id, Severity.WARNING, summary, false, true);
  }

  public static RuleInfo information(String id, String summary) {
    return new RuleInfo(id, Severity.INFORMATION, summary, false, true);
  }

  public static RuleInfo hint(String id, String summary) {
    return new RuleInfo(id, Severity.HINT, summary, false, true);
  }

  /** The same for a rule whose findings tell that somebody may get hurt. */
  public RuleInfo forSafety() {
    return new RuleInfo(id, severity, summary, true, acceptable);
  }

  /** The same for a rule whose findings leave nothing that could be wanted, such as broken lines. */
  public RuleInfo neverAccepted() {
    return new RuleInfo(id, severity, summary, safety, false);
  }

  /**
   * Starts a finding.
   *
   * @param span where, counted from the section's start
   * @param message what was found, with its values; lower case, no full stop
   * @param values cut where they are too long for anybody to read
   */
  public Finding at(Span span, String message, Object... values) {
    Object[] readable = Arrays.stream(values).map(RuleInfo::readable).toArray();
    String text = values.length == 0 ? message : String.format(Locale.ROOT, message, readable);
    return Finding.of(this, span, text);
  }

  private static Object readable(Object value) {
    return value instanceof String text && text.length() > LONGEST_VALUE
        ? text.substring(0, text.offsetByCodePoints(0, LONGEST_VALUE / 2)) + "…"
        : value;
  }
}
