package dev.kettlemark.analysis;

import dev.kettlemark.quantity.Mass;

/** What is left after handling loss: what can be filled, cut and sold. */
public record FinishedWeight(Mass mass) {}
