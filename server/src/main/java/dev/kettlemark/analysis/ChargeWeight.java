package dev.kettlemark.analysis;

import dev.kettlemark.quantity.Mass;

/** All that is weighed in. */
public record ChargeWeight(Mass mass) {}
