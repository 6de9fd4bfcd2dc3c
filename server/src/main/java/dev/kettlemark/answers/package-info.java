/**
 * Layer: from a wanted result back to what must be changed.
 * Promise: each answer is tried on the whole formula before it is given, with its derivation and band;
 *     where there is none, the reachable range is told.
 * May use: {@code analysis}, {@code library} and everything below them.
 * Never: edits a text, decides what is a mistake, or knows an editor or a terminal.
 *
 * <p>Start reading at {@link dev.kettlemark.answers.CookTemperature}.
 */
@NullMarked
package dev.kettlemark.answers;

import org.jspecify.annotations.NullMarked;
