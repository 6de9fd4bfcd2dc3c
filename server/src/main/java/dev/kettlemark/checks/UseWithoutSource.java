package dev.kettlemark.checks;

import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Statement;
import dev.kettlemark.text.Excerpt;
import java.util.List;
import java.util.stream.Stream;

/**
 * Reports a usual dose that does not say who says so.
 *
 * <p>Nobody can then judge a dose outside it.
 */
public final class UseWithoutSource implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.information("use-without-source", "a usual dose names no source");

  private static final String COMMON = "common practice, no source";

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return OwnIngredient.of(subject).stream()
        .flatMap(own -> check(subject, own))
        .toList();
  }

  private static Stream<Finding> check(Subject subject, Ingredient own) {
    return own.facts()
        .all("use")
        .filter(fact -> fact.text().filter(text -> !text.value().isBlank()).isEmpty())
        .map(fact -> {
          Finding finding = INFO.at(
                  fact.span(),
                  "the usual dose of %s, %s, names no source",
                  Excerpt.of(own.name().value()),
                  range(subject, fact))
              .because("nobody can judge a dose outside it without knowing who says so");
          return fact.text().isPresent()
              ? finding
              : finding.withFix(Fix.insert(
                  "Write `from \"" + COMMON + "\"`",
                  fact.span().end(),
                  "  from \"" + COMMON + "\""));
        });
  }

  /** The dose as it is written, without its word. */
  private static String range(Subject subject, Statement fact) {
    int end = fact.text().map(text -> text.span().start()).orElse(fact.span().end());
    String written =
        subject.text().substring(fact.word().span().end(), end).strip().replaceAll("\\s+", " ");
    return written.replaceAll(" from$", "");
  }
}
