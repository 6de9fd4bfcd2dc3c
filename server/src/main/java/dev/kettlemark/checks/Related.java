package dev.kettlemark.checks;

import dev.kettlemark.library.Origin;

/** Another place that belongs to a finding, and what stands there. */
public record Related(Origin origin, String message) {}
