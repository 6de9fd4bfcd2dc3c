package dev.kettlemark.science;

/**
 * A published figure that the program does not follow, and why.
 *
 * @param check both figures; its tolerance is what the model claims elsewhere, and they differ by more
 * @param because why the figure is not followed
 */
public record Contradiction(Check check, String because) {}
