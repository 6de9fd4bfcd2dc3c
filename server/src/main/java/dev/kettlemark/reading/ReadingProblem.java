package dev.kettlemark.reading;

import dev.kettlemark.text.Span;

/** A line whose shape is right but whose meaning is not: where, and one plain sentence. */
public record ReadingProblem(Span span, String message) {}
