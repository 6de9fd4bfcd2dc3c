package dev.kettlemark.syntax;

import dev.kettlemark.text.Span;

/** A word and where it stands in its section. */
public record Word(String text, Span span) {}
