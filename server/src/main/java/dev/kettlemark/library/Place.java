package dev.kettlemark.library;

import dev.kettlemark.text.Span;

/** A stretch of a document. */
public record Place(String uri, Span span) {}
