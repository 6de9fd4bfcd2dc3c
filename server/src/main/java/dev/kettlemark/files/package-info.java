/**
 * Layer: reading and writing the disk, for the adapters.
 * Promise: what cannot be read is told and never stops the rest; what is written is written whole.
 * May use: the Java library.
 * Never: knows what stands in a file.
 *
 * <p>Start reading at {@link dev.kettlemark.files.KettleFolder}.
 */
@NullMarked
package dev.kettlemark.files;

import org.jspecify.annotations.NullMarked;
