package dev.kettlemark.checks;

import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Stage;
import dev.kettlemark.syntax.SectionWord;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Reports a name that stands for two things.
 *
 * <p>Names hold throughout a library, and stages throughout a formula; of two the first is meant and
 * the other is never used. To override an entry of the built-in pantry is no mistake.
 */
public final class DuplicateName implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("duplicate-name", "one name stands for two things");

  /** More places than this only confuse. */
  private static final int MOST_RELATED = 4;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return Stream.concat(
            section(subject).stream(),
            subject.writtenFormula().stream().flatMap(formula -> stages(subject, formula)))
        .toList();
  }

  private static Optional<Finding> section(Subject subject) {
    Optional<Kind> kind =
        subject.section().keyword().filter(SectionWord::opensSection).map(Kind::of);
    if (kind.isEmpty() || subject.declaration().isEmpty() || isBuiltIn(subject.entry())) {
      return Optional.empty();
    }
    Located<String> name = subject.declaration().get().name();
    List<Entry> all = subject.ask(Lookup.all(kind.get(), name.value()));
    if (all.isEmpty()) {
      return Optional.empty();
    }
    // The built-in entry, if there is one, comes last.
    int described = isBuiltIn(all.get(all.size() - 1)) ? all.size() - 1 : all.size();
    if (described < 2) {
      return Optional.empty();
    }
    boolean counts = all.get(0).equals(subject.entry());
    Finding finding = INFO.at(
            name.span(),
            "`%s` is described %d times, and %s counts",
            name.value(),
            described,
            counts ? "this one" : "another one")
        .because("a name means one thing throughout the library");
    for (Entry other : all.subList(0, Math.min(described, MOST_RELATED + 1))) {
      if (!other.equals(subject.entry())) {
        finding = finding.withRelated(
            other.origin(other.declaration().orElseThrow().name().span()), "described here");
      }
    }
    return Optional.of(finding.withFix(rename(name, free(subject, kind.get(), name.value()))));
  }

  private static Stream<Finding> stages(Subject subject, Formula formula) {
    Map<String, Stage> first = new HashMap<>();
    List<Finding> findings = new ArrayList<>();
    for (Stage stage : formula.stages()) {
      Stage earlier = first.putIfAbsent(stage.name().value(), stage);
      if (earlier != null) {
        findings.add(INFO.at(
                stage.name().span(),
                "the formula has two stages `%s`",
                stage.name().value())
            .because("a later stage that takes it gets only the first")
            .withRelated(subject.entry().origin(earlier.name().span()), "the first one")
            .withFix(rename(stage.name(), free(formula, stage.name().value()))));
      }
    }
    return findings.stream();
  }

  private static Fix rename(Located<String> name, String fresh) {
    return Fix.replace("Call this one `" + fresh + "`", name.span(), fresh);
  }

  private static String free(Subject subject, Kind kind, String name) {
    return numbered(name)
        .filter(fresh -> subject.ask(Lookup.of(kind, fresh)).isEmpty())
        .findFirst()
        .orElseThrow();
  }

  private static String free(Formula formula, String name) {
    return numbered(name)
        .filter(fresh -> formula.stage(fresh).isEmpty())
        .findFirst()
        .orElseThrow();
  }

  private static Stream<String> numbered(String name) {
    return IntStream.iterate(2, number -> number + 1).mapToObj(number -> name + "-" + number);
  }

  private static boolean isBuiltIn(Entry entry) {
    return entry.uri().startsWith(Pantry.SCHEME);
  }
}
