package dev.kettlemark.analysis;

import dev.kettlemark.model.Formula;
import dev.kettlemark.model.VariantChange;
import java.util.List;

/**
 * A formula with nothing left to look up in a parent.
 *
 * @param formula the whole formula
 * @param missed changes of a variant that found nothing to change in the parent
 */
public record ResolvedFormula(Formula formula, List<VariantChange> missed) {

  public ResolvedFormula {
    missed = List.copyOf(missed);
  }
}
