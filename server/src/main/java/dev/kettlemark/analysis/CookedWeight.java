package dev.kettlemark.analysis;

import dev.kettlemark.quantity.Mass;

/**
 * What is left after water has boiled away, before any handling loss.
 *
 * @param slack by how much the boiling model may be off
 */
public record CookedWeight(Mass mass, Mass slack) {}
