package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Variant;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.science.Sweetness;
import java.util.List;
import java.util.Optional;

/** Tells of a claim to be as sweet as another formula, where a taster would notice the difference. */
public final class LessSweetThanClaimed implements Rule {

  private static final RuleInfo INFO = RuleInfo.information(
      "less-sweet-than-claimed", "a formula is less sweet than the one it claims to equal");

  private static final String CLAIM = "as-sweet";

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject
        .formula()
        .map(formula -> formula
            .formula()
            .facts()
            .all("claim")
            .flatMap(claim -> check(subject, formula, claim).stream())
            .toList())
        .orElse(List.of());
  }

  private static Optional<Finding> check(
      Subject subject, ComputedFormula formula, Statement claim) {
    Optional<Located<String>> word =
        claim.objectNames().stream().filter(name -> name.value().equals(CLAIM)).findFirst();
    Optional<Located<String>> reference = claim.names(Connective.OF).stream()
        .findFirst()
        .or(() -> Rules.sound(subject).flatMap(Variant::parent))
        .filter(name -> !name.value().equals(formula.formula().name().value()));
    Optional<Composition> other = reference
        .flatMap(name -> subject.ask(Formulas.computed(name.value())))
        .flatMap(computed -> computed.composition().toOptional());
    Optional<Composition> own = formula.composition().toOptional();
    if (word.isEmpty() || other.isEmpty() || own.isEmpty()) {
      return Optional.empty();
    }
    double was = Sweetness.of(other.get()).fraction();
    double is = Sweetness.of(own.get()).fraction();
    double limit = subject.threshold(Threshold.SWEETNESS_LOSS).fraction();
    return was > 0 && 1 - is / was > limit
        ? Optional.of(finding(subject, claim, word.get(), reference.get(), own.get(), other.get()))
        : Optional.empty();
  }

  private static Finding finding(
      Subject subject,
      Statement claim,
      Located<String> word,
      Located<String> reference,
      Composition own,
      Composition other) {
    Finding finding = OtherPlace.heading(
        INFO.at(
                word.span(),
                "it is about %s as sweet as sugar, and `%s` is %s",
                shown(own),
                reference.value(),
                shown(other))
            .because("tasters notice a tenth, and the claim is not true"),
        subject,
        reference.value(),
        "what it is held against");
    boolean standsAlone = claim.objectNames().size() == 1;
    return standsAlone && subject.isWrittenHere(claim.span())
        ? finding.withFix(
            new Fix("Withdraw the claim", List.of(WrittenLines.of(subject).without(claim.span()))))
        : finding;
  }

  private static String shown(Composition composition) {
    return Display.fixed(Sweetness.of(composition).percent(), 0) + " %";
  }
}
