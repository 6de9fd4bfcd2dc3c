/**
 * Layer: a library as a set of pages that anybody can read without the program.
 * Promise: the same library gives the same pages, byte for byte, and every name a safe file of its own.
 * May use: sheets, cards, checks and all that they use.
 * Never: touches the disk, or names a text of the library in a place where it could act.
 *
 * <p>Start reading at {@link dev.kettlemark.publishing.Publication}.
 */
@NullMarked
package dev.kettlemark.publishing;

import org.jspecify.annotations.NullMarked;
