package dev.kettlemark.model;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A batch that was really made, and what was measured of it.
 *
 * @param formula the formula that was made
 * @param day when
 * @param house where
 */
public record Trial(
    Located<String> name,
    Optional<String> title,
    Optional<Located<String>> formula,
    Optional<LocalDate> day,
    Optional<Located<String>> house,
    Facts facts)
    implements Declaration {}
