package dev.kettlemark.features;

import dev.kettlemark.analysis.BasisWeights;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.CookedWeight;
import dev.kettlemark.model.BasisDefinition;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Product;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.syntax.Word;
import java.util.Optional;
import java.util.stream.Collectors;

/** A basis: what a percentage of it is a percentage of, and what it weighs. */
final class BasisHover implements HoverAnswer {

  @Override
  public Optional<HoverText> to(Pointed pointed) {
    return pointed
        .named(Symbol.Kind.BASIS)
        .flatMap(name -> pointed
            .formula()
            .flatMap(formula -> declared(formula, name.symbol().name()))
            .map(text -> pointed.text(text, name.occurrence().span())))
        .or(() -> pointed
            .word()
            .filter(word -> isBehindOf(pointed, word))
            .flatMap(
                word -> whole(pointed, word.text()).map(text -> pointed.text(text, word.span()))));
  }

  private static Optional<Markdown> declared(ComputedFormula formula, String name) {
    return formula.formula().basis(name).map(basis -> {
      Markdown markdown = new Markdown();
      markdown.paragraph("**basis " + Markdown.code(name) + "** = " + members(basis));
      BasisWeights.of(formula.formula(), name)
          .map(weights -> formula.amounts().weighted(weights))
          .ifPresent(share -> markdown.paragraph(Display.percent(WrittenFormula.ratio(share))
              + " of the charge"
              + formula
                  .amounts()
                  .charge()
                  .map(charge -> " · " + Display.mass(WrittenFormula.mass(charge.multiply(share))))
                  .orElse("")));
      return markdown;
    });
  }

  private static String members(BasisDefinition basis) {
    return basis.members().stream()
        .map(member -> Markdown.code(member.ingredient().value())
            + member.stage().map(stage -> " in " + Markdown.code(stage.value())).orElse(""))
        .collect(Collectors.joining(" + "));
  }

  private static Optional<Markdown> whole(Pointed pointed, String word) {
    Optional<ComputedFormula> formula = pointed.formula();
    return switch (word) {
      case "charge" ->
        Optional.of(new Markdown()
            .paragraph("**charge** — all that is weighed in, before any water boils away")
            .paragraph(formula
                .filter(f -> !f.isNominal())
                .map(f -> Display.batch(f.process().charge().mass()))
                .orElse("")));
      case "finished" ->
        Optional.of(new Markdown()
            .paragraph("**finished** — " + finished(pointed))
            .paragraph(formula
                .filter(f -> !f.isNominal())
                .flatMap(f -> f.process().cooked().toOptional())
                .map(CookedWeight::mass)
                .map(Display::mass)
                .orElse("")));
      default -> Optional.empty();
    };
  }

  private static String finished(Pointed pointed) {
    return pointed.entry().declaration().filter(Product.class::isInstance).isPresent()
        ? "the whole piece, coat included"
        : "what is there once all is done";
  }

  private static boolean isBehindOf(Pointed pointed, Word word) {
    return pointed.line().stream()
        .flatMap(line -> line.clauses().stream())
        .filter(clause -> clause.word() == Connective.OF)
        .anyMatch(clause -> clause.span().contains(word.span()));
  }
}
