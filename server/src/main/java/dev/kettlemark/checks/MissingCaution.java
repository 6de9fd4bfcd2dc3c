package dev.kettlemark.checks;

import dev.kettlemark.labelling.CautionNeed;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;

/**
 * Reports a danger that no caution warns of.
 *
 * <p>Raw egg has a rule of its own.
 */
public final class MissingCaution implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("missing-caution", "no caution warns of a danger").forSafety();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.label().stream()
        .map(Label::cautions)
        .flatMap(List::stream)
        .filter(need -> !need.isStated())
        .filter(need -> !need.caution().equals(RawEggNotHeated.CAUTION))
        .flatMap(need -> need.place().map(place -> finding(subject, need, place.span())).stream())
        .toList();
  }

  private static Finding finding(Subject subject, CautionNeed need, Span span) {
    Finding finding = INFO.at(span, "no `caution %s`, and %s", need.caution(), need.reason())
        .because(because(need))
        .withFix(add(subject, need.caution()));
    return need.isGrave() ? finding : finding.as(Severity.INFORMATION);
  }

  private static String because(CautionNeed need) {
    String statement = need.statement();
    String sentence = statement.substring(0, statement.length() - 1);
    return Character.toLowerCase(sentence.charAt(0)) + sentence.substring(1);
  }

  static Fix add(Subject subject, String caution) {
    return new Fix(
        "Add `caution " + caution + "`",
        List.of(new Columns(subject.section()).addFact(Optional.empty(), "caution", caution)));
  }
}
