/**
 * Layer: computed formulas to findings; one class for each rule.
 * Promise: a rule is a pure function of a section and of what it asks for, and says the same every time.
 * May use: {@code scaling}, {@code analysis} and everything below them.
 * Never: knows an editor, a terminal, or another rule.
 *
 * <p>Start reading at {@link dev.kettlemark.checks.Rules}, then any rule.
 */
@NullMarked
package dev.kettlemark.checks;

import org.jspecify.annotations.NullMarked;
