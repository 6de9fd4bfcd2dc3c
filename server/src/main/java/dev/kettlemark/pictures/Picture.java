package dev.kettlemark.pictures;

/**
 * A picture, whole in itself and fit to stand in a page beside others.
 *
 * @param title what it is called
 * @param words the same that it shows, in words
 * @param svg the picture as an SVG element
 */
public record Picture(String title, String words, String svg) {}
