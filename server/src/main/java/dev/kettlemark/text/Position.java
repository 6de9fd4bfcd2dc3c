package dev.kettlemark.text;

/**
 * A place in a text as editors count it.
 *
 * @param line line number from 0
 * @param column units of a {@link PositionEncoding} from the start of the line, from 0
 */
public record Position(int line, int column) {}
