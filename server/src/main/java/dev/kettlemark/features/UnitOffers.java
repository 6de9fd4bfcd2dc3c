package dev.kettlemark.features;

import dev.kettlemark.features.Proposal.Kind;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/** The units that may stand behind a figure. */
final class UnitOffers {

  private UnitOffers() {}

  /** Units of an amount, percent first. */
  static List<Offer> ofAmounts() {
    return of(Set.of(
        Unit.Dimension.SHARE, Unit.Dimension.MASS, Unit.Dimension.VOLUME, Unit.Dimension.COUNT));
  }

  /** Units of what a connective introduces; none where it introduces no figure. */
  static List<Offer> behind(Connective connective) {
    return switch (connective) {
      case FOR, OVER, WITHIN -> of(Set.of(Unit.Dimension.TIME));
      case TO, ABOVE, AT -> of(Set.of(Unit.Dimension.TEMPERATURE));
      case BELOW -> of(Set.of(Unit.Dimension.TEMPERATURE, Unit.Dimension.HUMIDITY));
      default -> List.of();
    };
  }

  private static List<Offer> of(Set<Unit.Dimension> dimensions) {
    return Arrays.stream(Unit.values())
        .filter(unit -> dimensions.contains(unit.dimension()))
        .map(unit -> Offer.of(unit.symbol(), Kind.UNIT, ""))
        .toList();
  }
}
