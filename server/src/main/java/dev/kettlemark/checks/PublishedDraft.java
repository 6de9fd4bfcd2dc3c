package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Statement;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Reports a draft, or what has been withdrawn, that goes out of the kitchen.
 *
 * <p>It goes out on a sheet for others than cooks, or as a part of something that is released. A draft on
 * a sheet for the cooks of the house is how it is tried.
 */
public final class PublishedDraft implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("published-draft", "a draft goes out under the name of the house");

  private static final Set<String> NOT_READY = Set.of("draft", "withdrawn");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return Stream.concat(
            ShownSheet.of(subject).stream().flatMap(PublishedDraft::shown),
            subject
                .declaration()
                .filter(declaration -> Facts.of(declaration)
                    .flatMap(facts -> facts.wordOf("status"))
                    .filter(status -> status.value().equals("released"))
                    .isPresent())
                .stream()
                .flatMap(declaration -> parts(subject, declaration))
                .flatMap(part -> released(subject, part).stream()))
        .toList();
  }

  private static Stream<Finding> shown(ShownSheet sheet) {
    Optional<Located<String>> reader = sheet.sheet().reader();
    if (reader.isEmpty() || sheet.isFor("chef")) {
      return Stream.empty();
    }
    Stream<String> standings = Stream.concat(
        standing(sheet.name().value(), sheet.facts()),
        sheet.formulas().stream()
            .map(ComputedFormula::formula)
            .flatMap(formula -> standing(formula.name().value(), formula.facts())));
    return standings
        .limit(1)
        .map(standing -> INFO.at(
                sheet.name().span(),
                "%s, and this sheet is for %s",
                standing,
                reader.get().value())
            .because("figures that nobody has tried go out under the name of the house")
            .withRelated(sheet.entry().origin(sheet.shown().name().span()), "what is shown")
            .withFix(Fix.replace(
                "Make it a sheet for `chef`, to be tried first", reader.get().span(), "chef")));
  }

  /** {@code `x` is a draft}; nothing for what is ready. */
  private static Stream<String> standing(String name, Facts facts) {
    return notReady(facts).map(status -> "`" + name + "` is " + worded(status)).stream();
  }

  private static Stream<Located<String>> parts(Subject subject, Declaration declaration) {
    return declaration instanceof Product product
        ? product.parts().stream().flatMap(part -> part.material().stream())
        : subject.formula().map(ComputedFormula::formula).stream()
            .flatMap(formula -> formula.amounts().stream())
            .map(AmountLine::ingredient);
  }

  private static Optional<Finding> released(Subject subject, Located<String> part) {
    return subject
        .ask(Lookup.of(Kind.MATERIAL, part.value()))
        .flatMap(entry -> entry
            .declaration()
            .flatMap(Facts::of)
            .flatMap(PublishedDraft::notReady)
            .map(status -> INFO.at(
                    part.span(), "`%s` is %s, and this is released", part.value(), worded(status))
                .because("figures that nobody has tried go out under the name of the house")
                .withRelated(entry.heading(), "what it is made of")));
  }

  private static Optional<String> notReady(Facts facts) {
    return facts
        .first("status")
        .map(Statement::objectNames)
        .flatMap(words -> words.stream().findFirst())
        .map(Located::value)
        .filter(NOT_READY::contains);
  }

  private static String worded(String status) {
    return status.equals("draft") ? "a draft" : status;
  }
}
