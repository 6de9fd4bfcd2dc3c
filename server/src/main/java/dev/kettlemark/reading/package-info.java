/**
 * Layer: tree to declarations.
 * Promise: every section gives a declaration as far as it can be read, and a list of what could not.
 * May use: {@code syntax} and {@code model}.
 * Never: looks at another section, or computes.
 *
 * <p>Start reading at {@link dev.kettlemark.reading.Reading}.
 */
@NullMarked
package dev.kettlemark.reading;

import org.jspecify.annotations.NullMarked;
