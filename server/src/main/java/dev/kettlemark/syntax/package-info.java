/**
 * Layer: text to tree; the only user of ANTLR.
 * Promise: every text gives a tree and a list of problems, and an edit gives the same as a fresh start.
 * May use: {@code text} and {@code model}'s units.
 * Never: knows what a verb, a fact or a state means.
 *
 * <p>Start reading at {@link dev.kettlemark.syntax.ParsedText}.
 */
@NullMarked
package dev.kettlemark.syntax;

import org.jspecify.annotations.NullMarked;
