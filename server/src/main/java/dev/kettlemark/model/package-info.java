/**
 * Layer: above {@code quantity}; the values that formulas are made of.
 *
 * <p>Promise: every value is immutable and compares by content.
 *
 * <p>May use: {@code quantity}, {@code text}'s span and exact fractions.
 *
 * <p>Never: sees trees or files, or computes physics.
 *
 * <p>Start reading at {@link dev.kettlemark.model.Composition}.
 */
@NullMarked
package dev.kettlemark.model;

import org.jspecify.annotations.NullMarked;
