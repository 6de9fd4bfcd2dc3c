/**
 * Layer: two states of a library to what differs between them.
 * Promise: tells what changed in the texts, and what follows from it for every formula, variant and product;
 *     only what differs once it is shown counts; what is unknown stays unknown.
 * May use: {@code checks}, {@code answers}, {@code labelling}, {@code scaling} and everything below them.
 * Never: knows where the two states come from, or how a report is shown.
 *
 * <p>Start reading at {@link dev.kettlemark.comparison.LibraryComparison}.
 */
@NullMarked
package dev.kettlemark.comparison;

import org.jspecify.annotations.NullMarked;
