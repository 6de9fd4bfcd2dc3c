package dev.kettlemark.checks;

import dev.kettlemark.reading.ReadingProblem;
import java.util.List;
import java.util.stream.Stream;

/**
 * Reports what cannot be read: a broken line, an unknown fact word, an unclosed quote.
 *
 * <p>A line that nobody can read is a line that nobody weighs.
 */
public final class UnreadableText implements Rule {

  private static final RuleInfo INFO = RuleInfo.error(
          "unreadable-text", "a line cannot be read, so nothing on it counts")
      .neverAccepted();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return Stream.concat(
            subject.section().problems().stream().map(p -> INFO.at(p.span(), "%s", p.message())),
            subject.entry().reading().problems().stream().map(UnreadableText::finding))
        .toList();
  }

  private static Finding finding(ReadingProblem problem) {
    return INFO.at(problem.span(), "%s", problem.message())
        .withFixes(problem.near().stream()
            .map(word -> Fix.replace("Write `" + word + "`", problem.span(), word))
            .toList());
  }
}
