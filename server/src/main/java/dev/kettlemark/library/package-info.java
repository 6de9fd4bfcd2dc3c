/**
 * Layer: many texts as one library, and results that outlive edits.
 * Promise: names are global; a result is computed again only if something it looked at changed.
 * May use: {@code text}, {@code syntax}, {@code model}, {@code reading}.
 * Never: touches the disk, or knows what is computed.
 *
 * <p>Start reading at {@link dev.kettlemark.library.Library}.
 */
@NullMarked
package dev.kettlemark.library;

import org.jspecify.annotations.NullMarked;
