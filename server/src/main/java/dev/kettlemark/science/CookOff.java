package dev.kettlemark.science;

import dev.kettlemark.model.Portion;
import dev.kettlemark.quantity.Mass;

/**
 * What cooking leaves and what it drives off.
 *
 * @param cooked what is left in the kettle
 * @param water driven off as steam; zero if the temperature is reached before the syrup boils
 * @param ethanol driven off
 */
public record CookOff(Portion cooked, Mass water, Mass ethanol) {}
