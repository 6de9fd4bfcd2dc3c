package dev.kettlemark.cards;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.answers.Answer;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.sheets.Phrase;
import java.util.List;
import java.util.Optional;

/**
 * A question, with what its card must know besides the answer.
 *
 * @param kind {@code cook}, {@code gelatine} and so on; keys of the words start with it
 * @param about what stands in the places of the question
 * @param formula that was asked about; empty for a question about weights alone
 * @param goes the material that is replaced
 * @param comes the material that takes its place
 * @param answer the answer
 */
public record Asked(
    String kind,
    List<Phrase> about,
    Optional<ComputedFormula> formula,
    Optional<Ingredient> goes,
    Optional<Ingredient> comes,
    Answer answer) {

  public Asked {
    about = List.copyOf(about);
  }

  /** A question about a formula in which nothing is replaced. */
  public static Asked of(String kind, ComputedFormula formula, Answer answer, String... about) {
    return new Asked(
        kind, given(about), Optional.of(formula), Optional.empty(), Optional.empty(), answer);
  }

  /** A question about weights and temperatures alone. */
  public static Asked of(String kind, Answer answer, String... about) {
    return new Asked(
        kind, given(about), Optional.empty(), Optional.empty(), Optional.empty(), answer);
  }

  /** The same question where one material takes the place of another. */
  public Asked replacing(Material old, Material fresh) {
    return new Asked(kind, about, formula, old.ingredient(), fresh.ingredient(), answer);
  }

  private static List<Phrase> given(String... about) {
    return List.of(about).stream().map(Phrase::given).toList();
  }
}
