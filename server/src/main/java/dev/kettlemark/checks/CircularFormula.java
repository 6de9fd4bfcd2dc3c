package dev.kettlemark.checks;

import dev.kettlemark.analysis.Uses;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Mentions;
import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Reports a formula that, by way of others, is made of itself.
 *
 * <p>Nobody can start to weigh it, and no amount in it has an end.
 */
public final class CircularFormula implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("circular-formula", "a formula is made of itself");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject
        .declaration()
        .flatMap(declaration -> Uses.circle(declaration, subject.scope())
            .map(path -> finding(subject, declaration, path)))
        .stream()
        .toList();
  }

  private static Finding finding(Subject subject, Declaration declaration, List<String> path) {
    Finding finding = INFO.at(
            place(declaration, path.get(1)),
            "`%s` is made of itself: %s",
            path.get(0),
            path.stream().collect(Collectors.joining(" → ")))
        .because("no amount in it has an end");
    for (int i = 1; i < path.size() - 1; i++) {
      Optional<Entry> entry = subject.ask(Lookup.of(Kind.MATERIAL, path.get(i)));
      Optional<Declaration> next = entry.flatMap(Entry::declaration);
      if (next.isPresent()) {
        finding = finding.withRelated(
            entry.get().origin(place(next.get(), path.get(i + 1))),
            "`" + path.get(i) + "` uses `" + path.get(i + 1) + "`");
      }
    }
    return finding;
  }

  /** Where a section names what it uses. */
  private static Span place(Declaration declaration, String used) {
    return Mentions.used(declaration).stream()
        .filter(name -> name.value().equals(used))
        .map(Located::span)
        .findFirst()
        .orElse(declaration.name().span());
  }
}
