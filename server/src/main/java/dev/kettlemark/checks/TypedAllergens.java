package dev.kettlemark.checks;

import dev.kettlemark.labelling.AllergenGroup;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.labelling.Market;
import dev.kettlemark.labelling.MarketAllergens;
import dev.kettlemark.labelling.MarketAllergens.Listed;
import dev.kettlemark.labelling.Phrase;
import dev.kettlemark.model.Located;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reports allergens that are typed by hand.
 *
 * <p>They are computed from the ingredients; what is typed stays as it was when an ingredient changes.
 */
public final class TypedAllergens implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("typed-allergens", "allergens are typed by hand").forSafety();

  /** A text that starts so and names an allergen is a statement; any other is a remark. */
  private static final Pattern STATEMENT =
      Pattern.compile("(?i)^\\s*(allergens?|allergy advice|contains|may contain|free from)\\b");

  private static final Pattern OF_CONTENT =
      Pattern.compile("(?i)^\\s*(allergens?|allergy advice|contains)\\b");

  private static final List<String> TEXTS = List.of("note", "pack");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.label().stream()
        .flatMap(label -> Stream.concat(typed(subject, label), contained(subject, label)))
        .toList();
  }

  private static Stream<Finding> typed(Subject subject, Label label) {
    return TEXTS.stream()
        .flatMap(word -> label.facts().all(word))
        .filter(fact -> subject.isWrittenHere(fact.span()))
        .flatMap(fact -> fact.text().stream()
            .filter(text -> isStatement(text.value()))
            .map(text -> finding(label, text)
                .withFix(new Fix(
                    "Remove the statement",
                    List.of(
                        new TextEdit(StatedWords.wholeLine(subject.text(), fact.span()), ""))))));
  }

  private static boolean isStatement(String text) {
    return STATEMENT.matcher(text).find()
        && Arrays.stream(Market.values())
            .flatMap(market -> AllergenGroup.of(market).stream())
            .anyMatch(group -> isNamed(text, group));
  }

  private static boolean isNamed(String text, AllergenGroup group) {
    return Phrase.isIn(text, group.name())
        || group.printed().stream().anyMatch(printed -> Phrase.isIn(text, printed));
  }

  private static Finding finding(Label label, Located<String> text) {
    List<String> left =
        OF_CONTENT.matcher(text.value()).find() ? leftOut(label, text.value()) : List.of();
    Finding finding = left.isEmpty()
        ? INFO.at(text.span(), "allergens are computed and not typed")
        : INFO.at(text.span(), "the typed allergens leave out %s", String.join(", ", left))
            .as(Severity.ERROR);
    return finding.because("what is typed stays as it was when an ingredient changes");
  }

  /** What is in it by the law of any of its markets, and not in the text. */
  private static List<String> leftOut(Label label, String text) {
    List<String> left = new ArrayList<>();
    for (Market market : label.markets()) {
      for (Listed listed : MarketAllergens.of(label.allergens(), market).contained()) {
        boolean isNew =
            left.stream().noneMatch(known -> known.equals(listed.group().name()));
        if (listed.group().isMajor() && isNew && !isNamed(text, listed.group())) {
          left.add(listed.group().name());
        }
      }
    }
    return left;
  }

  /** {@code may-contain} of something that is in it. */
  private static Stream<Finding> contained(Subject subject, Label label) {
    return StatedWords.of(subject, label, "may-contain").stream()
        .filter(word -> label.allergens().holds(word.word().value()))
        .map(word -> {
          String allergen = word.word().value();
          String source = label.allergens().sources(allergen).get(0).name();
          Finding finding = INFO.at(
                  word.word().span(), "`%s` is no trace: `%s` holds it", allergen, source)
              .because("a warning of traces plays down what is in it")
              .withFixes(word.withdraw().stream().toList());
          return OtherPlace.heading(finding, subject, source, "what holds it");
        });
  }
}
