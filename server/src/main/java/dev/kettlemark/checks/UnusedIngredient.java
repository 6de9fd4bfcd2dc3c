package dev.kettlemark.checks;

import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.text.Span;
import java.util.List;

/**
 * Reports an ingredient of the house that nothing uses.
 *
 * <p>It must be kept up to date all the same.
 */
public final class UnusedIngredient implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.hint("unused-ingredient", "no formula uses an ingredient of the house");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return OwnIngredient.of(subject)
        // A folder that holds a pantry only describes it for others.
        .filter(own -> subject.ask(Lookup.anyFormula()))
        .filter(own -> !subject.ask(Lookup.mentioned(own.name().value())))
        .map(own -> finding(subject, own))
        .stream()
        .toList();
  }

  private static Finding finding(Subject subject, Ingredient own) {
    return INFO.at(own.name().span(), "nothing uses `%s`", own.name().value())
        .because("what is kept must be reviewed, and clutters every list")
        .withFix(Fix.replace("Remove `" + own.name().value() + "`", whole(subject), ""));
  }

  /** From the heading to the last line that says something; a comment behind it belongs to what follows. */
  private static Span whole(Subject subject) {
    List<Line> lines = subject.section().lines();
    int end = lines.stream()
        .filter(line -> !(line instanceof Line.EmptyLine))
        .mapToInt(line -> line.span().end())
        .max()
        .orElse(0);
    return new Span(lines.get(0).span().start(), end);
  }
}
