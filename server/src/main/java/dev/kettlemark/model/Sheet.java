package dev.kettlemark.model;

import java.util.Optional;

/**
 * A rendering for one reader.
 *
 * @param subject the formula or product it shows
 * @param reader {@code chef}, {@code home} or {@code production}
 * @param language a language tag such as {@code en-US}
 */
public record Sheet(
    Located<String> name,
    Optional<String> title,
    Optional<Located<String>> subject,
    Optional<Located<String>> reader,
    Optional<Located<String>> language,
    Facts facts)
    implements Declaration {}
