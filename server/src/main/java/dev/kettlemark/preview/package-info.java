/**
 * Layer: a place in a text to what is shown beside it while somebody writes: its sheet or one of its pictures.
 * Promise: there is always something to show, if only a sentence that says what is missing; it needs no
 *     script, and no style but the one that comes with it; what tells a line of the text can be found by it.
 * May use: {@code sheets}, {@code pictures}, {@code checks} and everything below them.
 * Never: knows an editor, or renders a sheet by itself.
 *
 * <p>Start reading at {@link dev.kettlemark.preview.Preview}.
 */
@NullMarked
package dev.kettlemark.preview;

import org.jspecify.annotations.NullMarked;
