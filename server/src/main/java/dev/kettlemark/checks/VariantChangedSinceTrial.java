package dev.kettlemark.checks;

import dev.kettlemark.analysis.FormulaVersion;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.TrialComparison;
import dev.kettlemark.analysis.Trials;
import dev.kettlemark.analysis.Uses;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Trial;
import dev.kettlemark.model.Variant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Reports a variant that has changed, or whose parent has, since it was last made.
 *
 * <p>A variant takes over what its parent has become, but its trials do not.
 */
public final class VariantChangedSinceTrial implements Rule {

  private static final RuleInfo INFO = RuleInfo.information(
      "variant-changed-since-trial", "a variant or its parent has changed since its last trial");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Optional<Variant> variant =
        subject.variant().filter(one -> Uses.circle(one, subject.scope()).isEmpty());
    if (variant.isEmpty()) {
      return List.of();
    }
    List<Trial> trials = Trials.of(variant.get().name().value(), subject.scope());
    Optional<LocalDate> last =
        trials.stream().flatMap(trial -> trial.day().stream()).max(Comparator.naturalOrder());
    if (last.isEmpty()) {
      return List.of();
    }
    return own(variant.get(), trials, last.get())
        .or(() -> inherited(subject, variant.get(), last.get()))
        .stream()
        .toList();
  }

  /** The variant's own version, newer than all of its trials. */
  private static Optional<Finding> own(Variant variant, List<Trial> trials, LocalDate last) {
    return FormulaVersion.of(variant.facts())
        .filter(
            version -> trials.stream().allMatch(trial -> TrialComparison.isOlder(trial, version)))
        .map(version -> INFO.at(
                version.line().span(),
                "%s is newer than the last trial of `%s`, of %s",
                version.shown(),
                variant.name().value(),
                last.toString())
            .because("what was made then is not what is written now"));
  }

  private static Optional<Finding> inherited(Subject subject, Variant variant, LocalDate last) {
    Optional<Located<String>> parent = variant.parent();
    Optional<FormulaVersion> version = parent
        .flatMap(name -> subject.ask(Formulas.resolved(name.value())))
        .flatMap(resolved -> FormulaVersion.of(resolved.formula().facts()))
        .filter(found -> found.since().filter(last::isBefore).isPresent());
    return version.flatMap(
        found -> parent.map(name -> finding(subject, variant, name, found, last)));
  }

  private static Finding finding(
      Subject subject,
      Variant variant,
      Located<String> parent,
      FormulaVersion version,
      LocalDate last) {
    Finding finding = INFO.at(
            parent.span(),
            "`%s` is at %s, and `%s` was last made on %s",
            parent.value(),
            version.shown(),
            variant.name().value(),
            last.toString())
        .because("the variant took over what its parent has become, and nobody has made that yet");
    Optional<Entry> entry = subject.ask(Lookup.of(Kind.MATERIAL, parent.value()));
    Finding placed = entry
        .map(found -> finding.withRelated(found.origin(version.line().span()), "the version now"))
        .orElse(finding);
    boolean isReleased = variant
        .facts()
        .wordOf("status")
        .filter(s -> s.value().equals("released"))
        .isPresent();
    return isReleased ? placed.as(Severity.WARNING) : placed;
  }
}
