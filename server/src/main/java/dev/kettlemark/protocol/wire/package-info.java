/**
 * Layer: the lowest part of {@code protocol}; bytes of a pipe on one side, calls of a language server on the other.
 *
 * <p>Promise: whatever a client sends, each request gets one answer, the process neither hangs nor dies, and it ends
 * soon after its client does.
 *
 * <p>May use: LSP4J's JSON-RPC classes, Gson, the process table of the operating system.
 *
 * <p>Never: touches the standard streams, knows a document or a formula, or waits on the thread that reads.
 *
 * <p>Start reading at {@link dev.kettlemark.protocol.wire.ServerProcess}.
 */
@NullMarked
package dev.kettlemark.protocol.wire;

import org.jspecify.annotations.NullMarked;
