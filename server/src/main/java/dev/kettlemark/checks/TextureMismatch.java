package dev.kettlemark.checks;

import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.science.GlassTransition;
import dev.kettlemark.science.Texture;
import java.util.List;
import java.util.Optional;

/**
 * Reports a brittle that will bend, and a chew that will snap.
 *
 * <p>Decided by how far the room lies from the glass transition of the sugars, and only where the whole
 * band of the estimate agrees. Mostly nuts or fat, a mass gets its bite of them.
 */
public final class TextureMismatch implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("texture-mismatch", "the sugars do not eat as the formula says");

  /** With less of sugars something else makes the bite; common practice, no source. */
  private static final double MOSTLY_SUGAR = 0.45;

  /** From here on something hard is a boiled sweet; common practice, no source. */
  private static final double NEARLY_ALL_SUGAR = 0.7;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return FinishedMass.of(subject)
        .filter(
            mass -> mass.isBoiled() && mass.composition().sweetSolids().fraction() > MOSTLY_SUGAR)
        .flatMap(mass ->
            mass.figures().texture().toOptional().flatMap(texture -> check(subject, mass, texture)))
        .stream()
        .toList();
  }

  private static Optional<Finding> check(
      Subject subject, FinishedMass mass, Band<Texture> texture) {
    boolean isMeantAsGlass = mass.isMeantToBe("brittle") || isBoiledSweet(mass);
    if (isMeantAsGlass && texture.isWhollyAbove(Texture.BORDERLINE)) {
      return Optional.of(finding(mass, texture, "a glass that bends is chewed, not snapped")
          .withFixes(mass.cookTo(subject, glassWater(mass)))
          .withFixes(mass.textureFix(subject, texture.low() == Texture.SOFT ? "soft" : "chewy")));
    }
    if (mass.isMeantToBe("chewy") && texture.isWhollyBelow(Texture.BORDERLINE)) {
      return Optional.of(finding(mass, texture, "a chew that is a glass breaks teeth")
          .withFixes(mass.textureFix(subject, "hard")));
    }
    return Optional.empty();
  }

  /** A hard nougat or a pressed bar may be bitten through without being a glass. */
  private static boolean isBoiledSweet(FinishedMass mass) {
    return mass.isMeantToBe("hard")
        && !mass.figures().parcel().isAerated()
        && mass.composition().sweetSolids().fraction() > NEARLY_ALL_SUGAR;
  }

  private static Finding finding(FinishedMass mass, Band<Texture> texture, String why) {
    String margin = mass.figures().glassMargin().map(Display::aboveGlass).orElse("");
    return INFO.at(
            mass.place(),
            "the sugars will be %s: the room is %s",
            texture.isExact()
                ? texture.low().word()
                : texture.low().word() + " to " + texture.high().word(),
            margin)
        .because(why);
  }

  /** The water of the whole at which its sugars are just a glass in the room. */
  private static Ratio glassWater(FinishedMass mass) {
    Composition composition = mass.composition();
    return GlassTransition.waterFor(composition, mass.figures().room())
        .map(band -> {
          double inSugars = band.low().fraction() / band.low().complement().fraction();
          double perSolids = inSugars
              * composition.sweetSolids().fraction()
              / composition.solids().fraction();
          return Ratio.ofFraction(perSolids / (1 + perSolids));
        })
        .orElse(composition.water());
  }
}
