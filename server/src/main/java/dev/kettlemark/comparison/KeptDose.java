package dev.kettlemark.comparison;

import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Ratio;
import java.util.Optional;

/**
 * The dose of a whipping or gelling ingredient that holds as much of what works as before its entry changed.
 *
 * @param measure {@code protein} or {@code bloom}: what the entry now states otherwise
 * @param stated what the entry stated and states, such as {@code 91.50 %}
 * @param formula the formula or variant, and its stage
 * @param before the dose of the earlier state, as a share of the charge
 * @param now the dose of the later state
 * @param kept the dose that would keep it, as a share of the charge
 * @param keptGrams the same in the batch of the later state
 * @param otherwise for a gelatine, the dose by the linear rule where the two rules disagree
 */
public record KeptDose(
    String ingredient,
    String measure,
    FigureChange stated,
    String formula,
    String stage,
    Ratio before,
    Ratio now,
    Ratio kept,
    Optional<Mass> keptGrams,
    Optional<Ratio> otherwise) {}
