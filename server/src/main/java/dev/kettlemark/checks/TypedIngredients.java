package dev.kettlemark.checks;

import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Sheet;
import dev.kettlemark.model.Statement;
import dev.kettlemark.text.TextEdit;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reports a list of ingredients that is typed by hand.
 *
 * <p>Its order is that of the weights, which move with each change.
 */
public final class TypedIngredients implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("typed-ingredients", "a list of ingredients is typed by hand");

  private static final Pattern LIST = Pattern.compile("(?i)^\\s*ingredients?\\s*:.*,.*");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return facts(subject).stream()
        .flatMap(facts -> Stream.concat(facts.all("note"), facts.all("pack")))
        .flatMap(fact -> finding(subject, fact).stream())
        .toList();
  }

  private static Optional<Facts> facts(Subject subject) {
    return subject
        .declaration()
        .flatMap(declaration -> declaration instanceof Sheet sheet
            ? Optional.of(sheet.facts())
            : Facts.of(declaration));
  }

  private static Optional<Finding> finding(Subject subject, Statement fact) {
    return fact.text()
        .filter(text -> LIST.matcher(text.value()).matches())
        .map(text -> INFO.at(text.span(), "the list of ingredients is computed and not typed")
            .because("its order is that of the weights, and stays behind when an amount changes;"
                + " `kettlemark label` prints it")
            .withFix(new Fix(
                "Remove the list",
                List.of(new TextEdit(StatedWords.wholeLine(subject.text(), fact.span()), "")))));
  }
}
