/**
 * Layer: what is told on one page of two formulas, or of one question, in the look of a sheet.
 * Promise: every figure carries its band, and what nobody knows is told as not known, with the reason.
 * May use: sheets and all that they use, and answers.
 * Never: computes in a renderer, or calls something the same that its bands do not hold together.
 *
 * <p>Start reading at {@link dev.kettlemark.cards.SideBySide}.
 */
@NullMarked
package dev.kettlemark.cards;

import org.jspecify.annotations.NullMarked;
