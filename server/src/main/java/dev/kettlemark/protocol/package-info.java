/**
 * Layer: adapter between editors and the library; the only user of LSP4J.
 * Promise: edits apply in order, every request is answered from one moment of the library, and nothing
 *     stale is ever published.
 * May use: everything but {@code cli}.
 * Never: decides anything about formulas.
 *
 * <p>Start reading at {@link dev.kettlemark.protocol.KettlemarkServer}.
 */
@NullMarked
package dev.kettlemark.protocol;

import org.jspecify.annotations.NullMarked;
