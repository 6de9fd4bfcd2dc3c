/**
 * What is shown beside a text: that there is always something, that lines lead to it, and that it can be read.
 *
 * <p>Start reading at {@link dev.kettlemark.preview.PreviewTest}.
 */
@NullMarked
package dev.kettlemark.preview;

import org.jspecify.annotations.NullMarked;
