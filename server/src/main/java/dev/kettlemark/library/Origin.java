package dev.kettlemark.library;

import dev.kettlemark.syntax.Section;
import dev.kettlemark.text.Span;

/**
 * A stretch of a section, wherever the section stands.
 *
 * @param span counted from the section's start
 */
public record Origin(String uri, Section section, Span span) {}
