package dev.kettlemark.science;

import dev.kettlemark.model.Portion;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Temperature;

/**
 * What parcels of different temperature become together.
 *
 * @param charge all of them, before any steam leaves
 * @param temperature from "with vessel and loss" to "without", over both models of heat content
 * @param steam water given off because the mixture reached its own boiling point
 * @param boilingPoint at which the mixture boils; unknown where the boiling model does not cover it
 */
public record PouredTogether(
    Portion charge,
    Band<Temperature> temperature,
    Band<Mass> steam,
    Outcome<Temperature> boilingPoint) {}
