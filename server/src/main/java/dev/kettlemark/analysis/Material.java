package dev.kettlemark.analysis;

import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.quantity.Outcome;
import java.util.Optional;

/**
 * What an amount is of: an ingredient of the pantry, or what another formula makes.
 *
 * @param name as the amount names it
 * @param composition what it is made of
 * @param ingredient the pantry entry; empty for a formula and for an unknown name
 */
public record Material(
    String name, Outcome<Composition> composition, Optional<Ingredient> ingredient) {}
