package dev.kettlemark.science;

import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Mass;

/**
 * Converts a mass of gelatine to another bloom.
 *
 * <p>Equations: root rule m₂ = m₁·√(B₁/B₂); linear rule m₂ = m₁·B₁/B₂.
 *
 * <p>Symbols: m₁, m₂ masses of gelatine; B₁, B₂ bloom in g.
 *
 * <p>Range: 50 to 325 bloom, kept by {@link Bloom}.
 *
 * <p>Expected error: the root rule follows gel strength within 3 %; the linear rule is kitchen custom and overdoses weak
 * grades.
 *
 * <p>Source: [1] Gelatin Manufacturers Institute of America, Gelatin Handbook (2012), for the root rule. [2] Common
 * practice, no source, for the linear rule.
 */
public final class GelatineStrength {

  /** Names the root rule in a derivation. */
  public static final Equation EQUATION = new Equation(
      "gelatine of another bloom",
      "m2 = m1·√(B1/B2)",
      "gelatine makers' handbooks (root rule)",
      Confidence.MODEL);

  /** Names the linear rule in a derivation. */
  public static final Equation LINEAR = new Equation(
      "gelatine of another bloom, linear rule",
      "m2 = m1·B1/B2",
      "common practice, no source",
      Confidence.RULE_OF_THUMB);

  /** The two rules count as contradicting each other above this difference; an own choice. */
  private static final double NOTICEABLE = 0.10;

  private GelatineStrength() {}

  /** Returns the mass that gels as strongly, by the root rule. */
  public static Mass byRootRule(Mass mass, Bloom from, Bloom to) {
    return mass.times(Math.sqrt(from.grams() / to.grams()));
  }

  /** Returns the mass that gels as strongly, by the linear rule of the kitchen. */
  public static Mass byLinearRule(Mass mass, Bloom from, Bloom to) {
    return mass.times(from.grams() / to.grams());
  }

  /** Returns the band between both rules. */
  public static Band<Mass> byBothRules(Mass mass, Bloom from, Bloom to) {
    return Band.spanning(byRootRule(mass, from, to), byLinearRule(mass, from, to));
  }

  /** Tells whether the rules differ by more than a tenth, so that the choice must be named. */
  public static boolean rulesDisagree(Bloom from, Bloom to) {
    double root = Math.sqrt(from.grams() / to.grams());
    return Math.abs(root * root - root) > NOTICEABLE * root;
  }

  /**
   * Returns the bloom of two grades mixed, weighted by mass.
   *
   * @param one mass of the first grade; not both masses are zero
   */
  public static Bloom mixed(Mass one, Bloom ofOne, Mass other, Bloom ofOther) {
    double share = one.dividedBy(one.plus(other)).fraction();
    return new Bloom(share * ofOne.grams() + (1 - share) * ofOther.grams());
  }
}
