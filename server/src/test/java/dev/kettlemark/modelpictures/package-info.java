/**
 * Draws the pictures of {@code server/pictures} from the program's own figures.
 *
 * <p>Start reading at {@link dev.kettlemark.modelpictures.ModelPicturesTest}.
 */
@NullMarked
package dev.kettlemark.modelpictures;

import org.jspecify.annotations.NullMarked;
