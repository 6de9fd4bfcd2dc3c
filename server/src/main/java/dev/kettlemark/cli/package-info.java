/**
 * Layer: the terminal's adapter; one class for each command.
 * Promise: the same answers as in an editor, with exit codes that a build can rely on.
 * May use: every other package; picocli for options and help, Gson for JSON.
 * Never: computes anything itself.
 *
 * <p>Start reading at {@link dev.kettlemark.cli.KettlemarkCommand}, then any command.
 */
@NullMarked
package dev.kettlemark.cli;

import org.jspecify.annotations.NullMarked;
