/**
 * Layer: computed formulas to answers for an editor or a terminal; one class for each feature.
 * Promise: a feature is a pure function of a snapshot and a place, gives records of its own, and answers on broken text.
 * May use: {@code analysis} and everything below it; {@code QuickFixes} alone also {@code checks}.
 * Never: knows a protocol, a terminal, or another rule than through its findings.
 *
 * <p>Start reading at {@link dev.kettlemark.features.Hover}, then {@link dev.kettlemark.features.Symbols}.
 */
@NullMarked
package dev.kettlemark.features;

import org.jspecify.annotations.NullMarked;
