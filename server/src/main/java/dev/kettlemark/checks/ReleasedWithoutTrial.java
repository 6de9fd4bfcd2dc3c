package dev.kettlemark.checks;

import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Variant;
import java.util.List;
import java.util.Optional;

/**
 * Reports a released formula of which the library knows no trial.
 *
 * <p>As far as it tells, nobody has ever made it.
 */
public final class ReleasedWithoutTrial implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("released-without-trial", "a released formula has no trial");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject
        .declaration()
        .filter(declaration -> declaration instanceof Formula || declaration instanceof Variant)
        .flatMap(declaration -> released(declaration)
            .filter(status ->
                subject.ask(Lookup.trialsOf(declaration.name().value())).isEmpty())
            .map(status -> INFO.at(
                    status.span(),
                    "`%s` is released, and the library holds no trial of it",
                    declaration.name().value())
                .because("as far as it tells, nobody has ever made it")
                .withFix(Fix.replace("Set `status bench`", status.span(), "bench"))))
        .stream()
        .toList();
  }

  /** The word {@code released}, where the section itself has it. */
  private static Optional<Located<String>> released(Declaration declaration) {
    return Facts.of(declaration)
        .flatMap(facts -> facts.wordOf("status"))
        .filter(status -> status.value().equals("released"));
  }
}
