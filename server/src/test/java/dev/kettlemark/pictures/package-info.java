/**
 * Pictures of formulas: that they are whole, legible and the same each time.
 *
 * <p>Start reading at {@link dev.kettlemark.pictures.PicturesTest}.
 */
@NullMarked
package dev.kettlemark.pictures;

import org.jspecify.annotations.NullMarked;
