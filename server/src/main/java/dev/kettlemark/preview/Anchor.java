package dev.kettlemark.preview;

import dev.kettlemark.library.Place;

/**
 * A line of a text and the element that tells it.
 *
 * @param place where it was written
 * @param id that of the element
 */
public record Anchor(Place place, String id) {}
