package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;

/**
 * The part of a composition that came from starch: longer saccharides with the glucose and maltose that go with them.
 *
 * <p>A glucose syrup is known as a whole, by its DE. A composition has lost the name of the syrup, so this part is put
 * together again: all longer saccharides, and up to 1.2 times their mass each of maltose and glucose, as much as a 63 DE
 * syrup brings along. An own estimate; it finds the DE of grades 28 to 63 within 3.
 *
 * @param longer maltotriose and higher saccharides, as a fraction of the composition
 * @param maltose that belongs to the syrup, likewise
 * @param glucose that belongs to the syrup, likewise
 * @param dextroseEquivalent of the part; zero if there is none
 */
record StarchSyrupPart(double longer, double maltose, double glucose, double dextroseEquivalent) {

  private static final double MOST_SMALL_PER_LONGER = 1.2;

  /** Makes an acid-converted 42 DE syrup of 19, 14, 12 and 55 % come out at 42; an own estimate. */
  private static final double HIGHER_GRAMS_PER_MOLE = 873;

  static StarchSyrupPart of(Composition composition) {
    double three = composition.fraction(Component.MALTOTRIOSE);
    double higher = composition.fraction(Component.HIGHER_SACCHARIDES);
    double longer = three + higher;
    double maltose =
        Math.min(composition.fraction(Component.MALTOSE), MOST_SMALL_PER_LONGER * longer);
    double glucose =
        Math.min(composition.fraction(Component.GLUCOSE), MOST_SMALL_PER_LONGER * longer);
    double moles = three / molarMass(Component.MALTOTRIOSE)
        + higher / HIGHER_GRAMS_PER_MOLE
        + maltose / molarMass(Component.MALTOSE)
        + glucose / molarMass(Component.GLUCOSE);
    double total = longer + maltose + glucose;
    double equivalent = total == 0 ? 0 : 100 * Solutes.HEXOSE_GRAMS_PER_MOLE * moles / total;
    return new StarchSyrupPart(longer, maltose, glucose, equivalent);
  }

  double total() {
    return longer + maltose + glucose;
  }

  private static double molarMass(Component component) {
    return Solutes.of(component).orElseThrow().gramsPerMole();
  }
}
