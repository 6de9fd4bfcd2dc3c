package dev.kettlemark.checks;

import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import java.util.List;
import java.util.Optional;

/**
 * Reports a layout of cut pieces that leaves more of the slab over than the loss that is planned.
 *
 * <p>The pieces lie in one grid, the better way round, edge on edge; what the knife takes is not counted.
 */
public final class CuttingWaste implements Rule {

  private static final RuleInfo INFO = RuleInfo.hint(
      "cutting-waste", "the edges of a cut slab are more than the loss that is planned");

  /** Half a percent is within what a ruler shows; an own choice. */
  private static final double NOTICEABLE = 0.005;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return WantedPiece.of(subject).stream()
        .flatMap(piece -> piece
            .cut()
            .flatMap(cut -> CutGrid.of(piece.formula(), cut))
            .filter(grid -> grid.pieces() > 0)
            .filter(grid -> grid.waste().fraction() > planned(subject) + NOTICEABLE)
            .map(grid -> finding(subject, piece, grid))
            .stream())
        .toList();
  }

  private static double planned(Subject subject) {
    return product(subject)
        .map(product -> product.loss().map(loss -> loss.value().doubleValue()).orElse(0.0))
        .orElseGet(() -> makes(subject)
            .flatMap(CuttingWaste::loss)
            .map(loss -> loss.value().doubleValue())
            .orElse(0.0));
  }

  private static Optional<Product> product(Subject subject) {
    return subject
        .declaration()
        .flatMap(d -> d instanceof Product product ? Optional.of(product) : Optional.empty());
  }

  private static Optional<Statement> makes(Subject subject) {
    return subject.formula().flatMap(formula -> formula.formula().facts().first("makes"));
  }

  private static Optional<Located<Double>> loss(Statement makes) {
    return makes
        .figure(Connective.WITH, Unit.Dimension.SHARE)
        .map(figure -> figure.map(value -> value.middleInBase().doubleValue()));
  }

  private static Finding finding(Subject subject, WantedPiece piece, CutGrid grid) {
    Ratio planned = Ratio.ofFraction(planned(subject));
    Finding alone = INFO.at(
            piece.weight(),
            "`%s` gives %d pieces and leaves %s of its slab, and %s is planned as loss",
            grid.frame().name().value(),
            grid.pieces(),
            Display.estimate(grid.waste()),
            planned.fraction() > 0 ? Display.estimate(planned) : "nothing")
        .because("the edges are missing when the pieces are counted");
    Finding finding = OtherPlace.tool(alone, subject, grid.frame().name().value());
    String loss = Display.trimmed(Math.ceil(grid.waste().percent()), 0) + " %";
    return fix(subject, loss).map(finding::withFix).orElse(finding);
  }

  private static Optional<Fix> fix(Subject subject, String loss) {
    String title = "Plan a loss of " + loss;
    if (product(subject).isPresent()) {
      Optional<Statement> written = product(subject).get().facts().first("loss");
      return Optional.of(written
          .flatMap(fact -> fact.objectFigure(Unit.Dimension.SHARE))
          .map(figure -> Fix.replace(title, figure.span(), loss))
          .orElseGet(() -> new Fix(
              title,
              List.of(new Columns(subject.section())
                  .addFact(Optional.empty(), "loss", loss + " of centre")))));
    }
    return makes(subject)
        .filter(fact -> subject.isWrittenHere(fact.span()))
        .map(fact -> loss(fact)
            .map(figure -> Fix.replace(title, figure.span(), loss))
            .orElseGet(() -> Fix.insert(title, fact.span().end(), " with " + loss + " loss")));
  }
}
