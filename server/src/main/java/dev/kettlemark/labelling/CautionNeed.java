package dev.kettlemark.labelling;

import dev.kettlemark.library.Origin;
import java.util.Optional;

/**
 * A caution that a formula or product ought to carry.
 *
 * @param caution the word of the language
 * @param market the market that asks for it; empty for all
 * @param reason one plain clause in lower case
 * @param place what asks for it in the section itself; empty where only a part does, whose own page tells it
 * @param isStated whether the section, or a part that brings the cause, carries it
 * @param isGrave whether somebody gets hurt who cannot know
 * @param statement what a label may say
 */
public record CautionNeed(
    String caution,
    Optional<Market> market,
    String reason,
    Optional<Origin> place,
    boolean isStated,
    boolean isGrave,
    String statement,
    Law law) {}
