package dev.kettlemark.features;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;

/** The figure of an amount line, on every basis. */
final class AmountHover implements HoverAnswer {

  @Override
  public Optional<HoverText> to(Pointed pointed) {
    Optional<Span> figure = figure(pointed);
    return figure.flatMap(span -> WrittenFormula.of(pointed.snapshot(), pointed.entry())
        .flatMap(formula -> formula
            .ownLines()
            .filter(line -> line.line().measure().span().contains(span))
            .findFirst()
            .map(line -> text(pointed, formula, line, span))));
  }

  /** The figure or the {@code q.s.} pointed at. */
  private static Optional<Span> figure(Pointed pointed) {
    Optional<Span> sufficient = pointed
        .line()
        .flatMap(line -> line instanceof Line.SufficientLine amount
            ? Optional.of(amount.measure())
            : Optional.empty());
    return sufficient
        .filter(span -> span.touches(pointed.offset()))
        .or(() -> pointed.figure().map(figure -> figure.span()));
  }

  private static HoverText text(
      Pointed pointed, WrittenFormula formula, LineAmount line, Span span) {
    Markdown markdown = new Markdown();
    String written = line.line().measure().span().of(pointed.entry().section().text());
    markdown.paragraph("**" + Markdown.plain(written) + "** "
        + Markdown.code(line.line().ingredient().value()));
    new AmountsHere(formula.computed(), List.of(line)).addTo(markdown);
    line.line().written().flatMap(UnitHover::inBase).ifPresent(markdown::paragraph);
    return pointed.text(markdown, span);
  }
}
