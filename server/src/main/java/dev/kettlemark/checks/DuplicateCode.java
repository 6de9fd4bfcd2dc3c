package dev.kettlemark.checks;

import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Located;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Reports a code number that stands on two formulas or products.
 *
 * <p>Orders, labels and trials go by the code, and then go to the wrong one.
 */
public final class DuplicateCode implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("duplicate-code", "one code stands on two formulas or products");

  private static final Pattern NUMBERED = Pattern.compile("(.*?)(\\d{1,8})");

  /** More places than this only confuse. */
  private static final int MOST_RELATED = 4;

  /** So many numbers are tried; a series with no gap so far is full. */
  private static final int MOST_TRIED = 1000;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject
        .declaration()
        .flatMap(Facts::of)
        .flatMap(facts -> facts.wordOf("code"))
        .flatMap(code -> check(subject, code))
        .stream()
        .toList();
  }

  private static Optional<Finding> check(Subject subject, Located<String> code) {
    List<Entry> others = subject.ask(Lookup.withCode(code.value())).stream()
        .filter(entry -> !entry.equals(subject.entry()))
        .toList();
    if (others.isEmpty()) {
      return Optional.empty();
    }
    Finding finding = INFO.at(
            code.span(),
            "code `%s` also stands on `%s`%s",
            code.value(),
            others.get(0).declaration().map(Declaration::name).orElseThrow().value(),
            others.size() == 1 ? "" : " and %d more".formatted(others.size() - 1))
        .because("orders, labels and trials go by the code");
    for (Entry other : others.subList(0, Math.min(others.size(), MOST_RELATED))) {
      finding = finding.withRelated(
          other.origin(other.declaration().orElseThrow().name().span()), "the same code");
    }
    return Optional.of(finding.withFixes(nextFree(subject, code).stream().toList()));
  }

  private static Optional<Fix> nextFree(Subject subject, Located<String> code) {
    Matcher matcher = NUMBERED.matcher(code.value());
    if (!matcher.matches()) {
      return Optional.empty();
    }
    String prefix = matcher.group(1);
    int width = matcher.group(2).length();
    int number = Integer.parseInt(matcher.group(2));
    return IntStream.rangeClosed(number + 1, number + MOST_TRIED)
        .mapToObj(next -> prefix + "0".repeat(Math.max(0, width - digits(next))) + next)
        .filter(next -> subject.ask(Lookup.withCode(next)).isEmpty())
        .findFirst()
        .map(next -> Fix.replace("Take `" + next + "`, which is free", code.span(), next));
  }

  private static int digits(int number) {
    return Integer.toString(number).length();
  }
}
