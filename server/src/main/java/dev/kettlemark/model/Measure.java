package dev.kettlemark.model;

import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/** How much of something a line asks for. */
public sealed interface Measure {

  /**
   * A share of a basis.
   *
   * @param fraction the share as a fraction of one, exact
   * @param basis the basis written on the line; empty where the formula's own holds
   */
  record Share(BigFraction fraction, Optional<Basis> basis) implements Measure {}

  /** A weight in grams, exact. */
  record Weight(BigFraction grams) implements Measure {}

  /** A volume in millilitres, exact; a density makes a weight of it. */
  record Capacity(BigFraction millilitres) implements Measure {}

  /** A count of pieces. */
  record Count(BigFraction pieces) implements Measure {}

  /** As much as suffices to fill the formula up to the whole. */
  record Sufficient() implements Measure {}

  /** Something that was written but cannot be read as an amount; the reason is told elsewhere. */
  record Unreadable() implements Measure {}
}
