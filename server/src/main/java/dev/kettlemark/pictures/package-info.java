/**
 * Layer: computed formulas and products to pictures.
 * Promise: a picture is a pure function of what was computed, the same to the byte each time, and tells in words what it
 * shows; what is unknown is drawn as unknown.
 * May use: {@code scaling}, {@code analysis} and everything below them; the only user of ELK.
 * Never: computes a figure of a formula, or knows a page, an editor or a terminal.
 *
 * <p>Start reading at {@link dev.kettlemark.pictures.Pictures}, then {@link dev.kettlemark.pictures.FlowPicture}.
 */
@NullMarked
package dev.kettlemark.pictures;

import org.jspecify.annotations.NullMarked;
