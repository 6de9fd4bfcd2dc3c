package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.labelling.HighestTemperature;
import dev.kettlemark.labelling.Phrase;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reports a ground nut or a flour that nobody has heated and that no step heats.
 *
 * <p>Dry foods carry salmonella for months, and a dry mass protects it from mild heat.
 */
public final class RawNutInCoolMass implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.information("raw-nut-in-cool-mass", "a ground nut or flour is heated nowhere");

  /** Almonds blanched at 190 °F for two minutes count as pasteurised: 7 CFR 981.442(b), from memory. */
  private static final Temperature TREATED = Temperature.ofFahrenheit(190);

  private static final Set<String> GROUND = Set.of("powder", "paste");

  /** Each is followed through all stages; nobody mends more at once. */
  private static final int MOST_NAMES = 20;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().map(RawNutInCoolMass::check).orElse(List.of());
  }

  private static List<Finding> check(ComputedFormula formula) {
    List<Finding> findings = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Amounts.LineAmount amount : formula.amounts().lines()) {
      Located<String> name = amount.line().ingredient();
      boolean isRaw = formula
          .material(name.value())
          .flatMap(Material::ingredient)
          .filter(RawNutInCoolMass::isRaw)
          .isPresent();
      if (isRaw && seen.size() < MOST_NAMES && seen.add(name.value())) {
        Optional<Band<Temperature>> reached = HighestTemperature.of(formula, name.value());
        if (reached.filter(band -> band.low().compareTo(TREATED) >= 0).isEmpty()) {
          findings.add(finding(name, reached));
        }
      }
    }
    return findings;
  }

  private static boolean isRaw(Ingredient ingredient) {
    boolean isGroundNut =
        ingredient.hasRole("nut") && ingredient.form().filter(GROUND::contains).isPresent();
    boolean isFlour = Phrase.isIn(ingredient.shownName(), "flour") && ingredient.hasRole("starch");
    return (isGroundNut || isFlour) && !ingredient.hasTrait("heat-treated");
  }

  private static Finding finding(Located<String> name, Optional<Band<Temperature>> reached) {
    return INFO.at(
            name.span(),
            "`%s` is not heat-treated and %s",
            name.value(),
            reached
                .map(band -> "gets no warmer than " + Display.celsius(band))
                .orElse("nothing heats it"))
        .because(
            "dry foods carry salmonella for months; take a roasted or pasteurised one, or ask the"
                + " supplier for its treatment");
  }
}
