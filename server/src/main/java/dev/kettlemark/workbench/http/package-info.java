/**
 * Layer: the lowest part of {@code workbench}; a small HTTP/1.1 server (RFC 9112) and WebSocket end point (RFC 6455)
 * for one user on this machine.
 *
 * <p>Promise: it listens on the loopback address alone; whatever a stranger sends, memory, threads and time spent on
 * it are bounded, and what it sends is either understood by the letter or refused.
 *
 * <p>May use: sockets of the JDK.
 *
 * <p>Never: knows a file, a formula or the language server.
 *
 * <p>Start reading at {@link dev.kettlemark.workbench.http.LoopbackServer}.
 */
@NullMarked
package dev.kettlemark.workbench.http;

import org.jspecify.annotations.NullMarked;
