package dev.kettlemark.features;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Figure;
import dev.kettlemark.analysis.FigureDerivations;
import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.quantity.Derivation;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.Word;
import java.util.Optional;

/** A figure that a formula expects, or its texture: what the models predict, and how that comes about. */
final class FigureHover implements HoverAnswer {

  @Override
  public Optional<HoverText> to(Pointed pointed) {
    Optional<Line.StatementLine> fact = pointed.statement();
    return fact.flatMap(line -> pointed
        .word()
        .flatMap(word -> figure(line, word)
            .flatMap(figure -> pointed
                .formula()
                .map(formula -> pointed.text(text(formula, figure), word.span())))));
  }

  private static Optional<Figure> figure(Line.StatementLine line, Word word) {
    return switch (line.head().text()) {
      case "expect" -> Figure.ofWord(word.text());
      case "texture" -> Optional.of(Figure.TEXTURE);
      default -> Optional.empty();
    };
  }

  private static Markdown text(ComputedFormula formula, Figure figure) {
    Outcome<Derivation> explained =
        MassFigures.of(formula).flatMap(figures -> FigureDerivations.of(figures, figure));
    Markdown markdown = new Markdown();
    markdown.paragraph("**" + figure.title() + "** of "
        + Markdown.code(formula.formula().name().value()) + " as predicted: "
        + explained.fold(Derivation::value, unknown -> "unknown, " + unknown.because()));
    markdown.paragraph(explained
        .map(derivation -> "How it is worked out:\n\n" + DerivationText.of(derivation))
        .orElse(""));
    return markdown;
  }
}
