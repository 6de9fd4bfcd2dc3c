/**
 * Layer: above {@code quantity} and {@code model}; the equations of the kitchen.
 *
 * <p>Promise: pure functions, each with its source, range and expected error; outside the range the answer is unknown.
 *
 * <p>May use: {@code quantity}, {@code model} and Hipparchus for root finding.
 *
 * <p>Never: extrapolates in silence, sees source text or trees, keeps state, or rounds before a label asks for it.
 *
 * <p>Start reading at {@link dev.kettlemark.science.SyrupBoiling}, then {@link dev.kettlemark.science.CheckTable}.
 */
@NullMarked
package dev.kettlemark.science;

import org.jspecify.annotations.NullMarked;
