/**
 * Layer: the lowest; text as an editor sees it.
 * Promise: offsets, positions and edits agree for every text, in every position encoding of the protocol.
 * May use: the Java library.
 * Never: knows what a formula is.
 *
 * <p>Start reading at {@link dev.kettlemark.text.Source}.
 */
@NullMarked
package dev.kettlemark.text;

import org.jspecify.annotations.NullMarked;
