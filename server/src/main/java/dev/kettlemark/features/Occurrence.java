package dev.kettlemark.features;

import dev.kettlemark.text.Span;

/**
 * A name in a section.
 *
 * @param symbol what it speaks of
 * @param span the name alone, counted from the section's start
 * @param defines whether the thing is declared here
 */
public record Occurrence(Symbol symbol, Span span, boolean defines) {}
