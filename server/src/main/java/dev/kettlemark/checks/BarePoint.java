package dev.kettlemark.checks;

import dev.kettlemark.syntax.Figures;
import dev.kettlemark.syntax.Lexeme;
import dev.kettlemark.syntax.Section;
import dev.kettlemark.text.Excerpt;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Reports a figure that starts with its point, such as {@code .5}.
 *
 * <p>A lone point is lost in a fold or a bad print, and 5 is ten times 0.5.
 */
public final class BarePoint implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("bare-point", "a figure starts with its point, which is easily overlooked");

  private static final Pattern BARE_POINT = Pattern.compile("(?<![0-9])\\.(?=[0-9])");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  /** A comma in the figure is told by a rule of its own. */
  @Override
  public List<Finding> check(Subject subject) {
    Section section = subject.section();
    if (section.keyword().isEmpty()) {
      return List.of();
    }
    List<Finding> findings = new ArrayList<>();
    for (Lexeme lexeme : section.lexemes()) {
      if (lexeme.kind() == Lexeme.Kind.NUMBER && hasPoint(section.text(), lexeme.span())) {
        String number = lexeme.span().of(section.text());
        if (BARE_POINT.matcher(number).find() && number.indexOf(',') < 0) {
          findings.add(finding(lexeme.span(), number));
        }
      }
    }
    return findings;
  }

  /** Most figures are whole, and then no pattern is needed. */
  private static boolean hasPoint(String text, Span span) {
    for (int i = span.start(); i < span.end(); i++) {
      if (text.charAt(i) == '.') {
        return true;
      }
    }
    return false;
  }

  private static Finding finding(Span span, String number) {
    String full = BARE_POINT.matcher(number).replaceAll("0.");
    Finding finding = INFO.at(span, "%s has no figure before its point", Excerpt.of(number))
        .because("a lone point is easily overlooked, and the figure is then many times too large");
    return Figures.hasValue(full)
        ? finding.withFix(Fix.replace("Write `" + full + "`", span, full).beyondDoubt())
        : finding;
  }
}
