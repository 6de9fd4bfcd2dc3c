/**
 * Layer: declarations to computed formulas and products.
 * Promise: amounts are exact, mass is conserved, and what cannot be known is unknown with its reason.
 * May use: {@code library}, {@code model}, {@code science}, {@code quantity}.
 * Never: decides what is a mistake, or how a result is shown.
 *
 * <p>Start reading at {@link dev.kettlemark.analysis.FormulaComputation}.
 */
@NullMarked
package dev.kettlemark.analysis;

import org.jspecify.annotations.NullMarked;
