/**
 * Layer: the lowest; physical quantities, bands, and answers that may be unknown.
 *
 * <p>Promise: every value is finite, carries its dimension in its type, and never changes.
 *
 * <p>May use: the Java platform only.
 *
 * <p>Never: rounds, formats for a reader, or knows what a formula is.
 *
 * <p>Start reading at {@link dev.kettlemark.quantity.Mass}.
 */
@NullMarked
package dev.kettlemark.quantity;

import org.jspecify.annotations.NullMarked;
