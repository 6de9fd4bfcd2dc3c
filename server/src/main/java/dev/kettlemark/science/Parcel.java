package dev.kettlemark.science;

import dev.kettlemark.model.Portion;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Temperature;

/**
 * Something of known mass, composition and temperature that is poured together with others.
 *
 * @param portion what it is and how much
 * @param temperature the band in which its temperature lies
 */
public record Parcel(Portion portion, Band<Temperature> temperature) {}
