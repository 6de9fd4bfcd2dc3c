/**
 * Layer: computed formulas and products to what their labels must and may say.
 * Promise: follows every ingredient through sub-formulas, variants and parts; what the law says is data
 *     with its source and date; what nobody has stated is unknown, never taken for absent.
 * May use: {@code scaling}, {@code analysis} and everything below them.
 * Never: decides what is a mistake, or how a label is shown.
 *
 * <p>Start reading at {@link dev.kettlemark.labelling.Labels}.
 */
@NullMarked
package dev.kettlemark.labelling;

import org.jspecify.annotations.NullMarked;
