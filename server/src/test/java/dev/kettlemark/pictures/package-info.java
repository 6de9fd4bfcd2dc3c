/**
 * Draws the pictures of {@code server/pictures} from the program's own figures.
 *
 * <p>Start reading at {@link dev.kettlemark.pictures.PicturesTest}.
 */
@NullMarked
package dev.kettlemark.pictures;

import org.jspecify.annotations.NullMarked;
