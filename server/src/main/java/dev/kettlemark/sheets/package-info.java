/**
 * Layer: computed formulas, products, labels and trials to what a printed sheet holds for one reader, and
 *     to the forms in which it is published.
 * Promise: every figure is a typed value with its unit and basis until it is shown; what is not known is
 *     said with its reason; sheets of one subject agree figure by figure.
 * May use: {@code answers}, {@code labelling}, {@code scaling}, {@code analysis} and everything below them.
 * Never: decides what is a mistake, or computes in a renderer.
 *
 * <p>Start reading at {@link dev.kettlemark.sheets.SheetContent}.
 */
@NullMarked
package dev.kettlemark.sheets;

import org.jspecify.annotations.NullMarked;
