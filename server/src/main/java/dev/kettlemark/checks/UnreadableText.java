package dev.kettlemark.checks;

import dev.kettlemark.library.Lookup;
import dev.kettlemark.reading.ReadingProblem;
import dev.kettlemark.syntax.ParsedText;
import java.util.List;
import java.util.stream.Stream;

/**
 * Reports what cannot be read: a broken line, an unknown fact word, an unclosed quote,
 * and a text so long that only its headings are read.
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
  public boolean isAboutReading() {
    return true;
  }

  @Override
  public List<Finding> check(Subject subject) {
    if (subject.excess().isPresent()) {
      return excess(subject).toList();
    }
    return Stream.of(
            subject.section().problems().stream().map(p -> INFO.at(p.span(), "%s", p.message())),
            subject.entry().reading().problems().stream().map(UnreadableText::finding))
        .flatMap(findings -> findings)
        .toList();
  }

  private static Stream<Finding> excess(Subject subject) {
    return subject.excess().stream()
        .filter(characters -> subject.ask(Lookup.opens(subject.entry())))
        .mapToObj(characters -> INFO.at(
                subject.section().lines().get(0).span(),
                "the text has %d characters, and beyond %d only headings are read",
                characters,
                ParsedText.MOST_CHARACTERS)
            .because("every key would have to wait for it; split it into several files"));
  }

  private static Finding finding(ReadingProblem problem) {
    return INFO.at(problem.span(), "%s", problem.message())
        .withFixes(problem.near().stream()
            .map(word -> Fix.replace("Write `" + word + "`", problem.span(), word))
            .toList());
  }
}
