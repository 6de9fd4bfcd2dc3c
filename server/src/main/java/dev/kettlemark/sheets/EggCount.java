package dev.kettlemark.sheets;

import dev.kettlemark.analysis.Material;
import dev.kettlemark.answers.Shelf;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;

/** For how much fresh egg white one part of something that whips stands; an equal count is no equal foam. */
record EggCount(Shelf shelf, Ingredient agent) {

  private static final String WHITE = "egg-white";

  /** By the protein that both hold: a mass balance. */
  Outcome<Double> byProtein() {
    Outcome<Double> white = shelf
        .material(WHITE)
        .map(Material::composition)
        .orElseGet(() ->
            Outcome.unknown(Reason.MISSING_COMPOSITION, "nobody has described fresh egg white"))
        .map(composition -> composition.fraction(Component.PROTEIN));
    Outcome<Double> own = agent.composition().map(all -> all.fraction(Component.PROTEIN));
    return Outcome.both(own, white, (one, other) -> one / other)
        .flatMap(by -> by > 0 && Double.isFinite(by)
            ? Outcome.known(by)
            : Outcome.<Double>unknown(Reason.MISSING_COMPOSITION, "one of both holds no protein"));
  }

  /** By what the library says stands in for it. */
  Outcome<Double> byCustom() {
    return shelf.standIns(WHITE).stream()
        .filter(found -> found.material().name().equals(agent.name().value()))
        .map(found -> found.share().fraction())
        .filter(share -> share > 0)
        .findFirst()
        .map(share -> Outcome.known(1 / share))
        .orElseGet(() -> Outcome.unknown(
            Reason.MISSING_FIGURE, "nobody has said how much of it stands for egg white"));
  }
}
