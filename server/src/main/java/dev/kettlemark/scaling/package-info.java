/**
 * Layer: from what is wanted back to what is weighed in.
 * Promise: percents never change, what is asked for comes out, and every line says how well it can be
 *     weighed.
 * May use: {@code analysis} and everything below it.
 * Never: edits a text, or shows anything.
 *
 * <p>Start reading at {@link dev.kettlemark.scaling.Scaling}.
 */
@NullMarked
package dev.kettlemark.scaling;

import org.jspecify.annotations.NullMarked;
