/**
 * Layer: top, beside {@code protocol} and {@code cli}; serves a page on this machine that edits one folder and is one
 * more client of the language server.
 *
 * <p>Promise: only a browser that was shown the one-time address gets anything, only files of the folder are read and
 * written, and a save never overwrites what somebody else has written.
 *
 * <p>May use: {@code protocol}'s server, {@code files}, Gson, and {@code workbench.http}.
 *
 * <p>Never: knows what stands in a file, or computes.
 *
 * <p>Start reading at {@link dev.kettlemark.workbench.Workbench}.
 */
@NullMarked
package dev.kettlemark.workbench;

import org.jspecify.annotations.NullMarked;
