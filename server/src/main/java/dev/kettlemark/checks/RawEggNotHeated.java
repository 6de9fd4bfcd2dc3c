package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.labelling.HighestTemperature;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.EggSafety;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reports raw egg that nothing heats enough.
 *
 * <p>Raw egg can carry salmonella; it is safe at once at 71 °C, or pasteurised before it is weighed in.
 */
public final class RawEggNotHeated implements Rule {

  static final String CAUTION = "raw-egg";

  private static final RuleInfo INFO = RuleInfo.error(
          "raw-egg-not-heated", "raw egg is never heated enough to be safe")
      .forSafety();

  private static final String PASTEURISED = "egg-white-pasteurised";

  /** Each is followed through all stages; nobody mends more at once. */
  private static final int MOST_NAMES = 20;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().map(formula -> check(subject, formula)).orElse(List.of());
  }

  private static List<Finding> check(Subject subject, ComputedFormula formula) {
    List<Finding> findings = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Amounts.LineAmount amount : formula.amounts().lines()) {
      Located<String> name = amount.line().ingredient();
      boolean isRawEgg = formula
          .material(name.value())
          .flatMap(Material::ingredient)
          .filter(RawEggNotHeated::isRawEgg)
          .isPresent();
      if (isRawEgg && seen.size() < MOST_NAMES && seen.add(name.value())) {
        Optional<Band<Temperature>> reached = HighestTemperature.of(formula, name.value());
        EggSafety.Verdict verdict =
            reached.map(EggSafety::ofWhite).orElse(EggSafety.Verdict.NOT_PASTEURISED);
        if (verdict != EggSafety.Verdict.SAFE_AT_ONCE) {
          findings.add(finding(subject, formula, name, reached, verdict));
        }
      }
    }
    return findings;
  }

  private static boolean isRawEgg(Ingredient ingredient) {
    return ingredient.hasTrait("raw-animal") && ingredient.facts().says("allergen", "egg");
  }

  private static Finding finding(
      Subject subject,
      ComputedFormula formula,
      Located<String> name,
      Optional<Band<Temperature>> reached,
      EggSafety.Verdict verdict) {
    boolean isWarned = formula.formula().facts().says("caution", CAUTION);
    Finding finding = INFO.at(
            name.span(),
            "`%s` is raw and %s",
            name.value(),
            reached
                .map(band -> "comes to " + Display.celsius(band) + " at the most")
                .orElse("nothing heats it"))
        .because("raw egg can carry salmonella; at once it is safe only at "
            + Display.celsius(EggSafety.SAFE_AT_ONCE))
        .as(severity(isWarned, verdict));
    if (subject.isWrittenHere(name.span()) && name.value().equals("egg-white")) {
      finding = finding.withFix(pasteurised(subject, name.value()));
    }
    return finding;
  }

  /** Held long enough it may be safe, and the steps do not always say how long. */
  private static Severity severity(boolean isWarned, EggSafety.Verdict verdict) {
    if (isWarned) {
      return Severity.INFORMATION;
    }
    return verdict == EggSafety.Verdict.NOT_PASTEURISED ? Severity.ERROR : Severity.WARNING;
  }

  static Fix pasteurised(Subject subject, String raw) {
    return RenamedHere.fix("Use `" + PASTEURISED + "`", subject, raw, PASTEURISED);
  }
}
