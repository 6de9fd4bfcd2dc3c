package dev.kettlemark.checks;

import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Verb;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reports an extract, a flower water or a spirit that is boiled.
 *
 * <p>What is volatile is a fact of the pantry. Pods and grounds are boiled to draw them out, so only
 * what is poured is meant; and under a lid most of it stays.
 */
public final class BoiledAroma implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("boiled-aroma", "a liquid flavour is boiled, and its aroma leaves");

  private static final Set<Verb.Effect> BOILING = Set.of(Verb.Effect.COOK, Verb.Effect.BOIL);

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    List<DoneStep> boils = subject.formula().stream()
        .flatMap(DoneStep::of)
        .filter(step -> BOILING.contains(step.effect()))
        .filter(step -> !step.step().has(Connective.UNDER, "lid"))
        .toList();
    if (boils.isEmpty()) {
      return List.of();
    }
    WeighedIn weighed = WeighedIn.of(boils.get(0).formula());
    Set<AmountLine> told = new HashSet<>();
    List<Finding> findings = new ArrayList<>();
    for (DoneStep boil : boils) {
      weighed
          .in(boil.stageIndex(), boil.before())
          .filter(held -> held.ingredient().filter(BoiledAroma::isFugitive).isPresent())
          .filter(held -> held.mass().grams() > 0 && told.add(held.line()))
          .forEach(held -> findings.add(finding(subject, boil, held)));
    }
    return findings;
  }

  private static boolean isFugitive(Ingredient ingredient) {
    return ingredient.hasTrait("volatile") && ingredient.isLiquid();
  }

  private static Finding finding(Subject subject, DoneStep boil, WeighedIn.Held held) {
    boolean isFoam = boil.formula().formula().steps().anyMatch(step -> step.is("whip"));
    Optional<Fix> fix = LaterAddition.of(
        subject, boil.formula(), held.line(), held.stage(), isFoam ? "fold" : "mix");
    return INFO.at(
            held.line().ingredient().span(),
            "`%s` goes through `%s` in `%s`",
            held.name(),
            boil.step().word().value(),
            boil.stage().name())
        .because("its aroma leaves with the steam; add it when nothing boils any more")
        .withFixes(fix.stream().toList());
  }
}
