package dev.kettlemark.features;

import dev.kettlemark.text.Span;

/**
 * What is shown for the thing under a pointer.
 *
 * @param markdown the text, as CommonMark with tables
 * @param span what it speaks of, absolute
 */
public record HoverText(String markdown, Span span) {}
