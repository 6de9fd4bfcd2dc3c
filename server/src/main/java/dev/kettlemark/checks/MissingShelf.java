package dev.kettlemark.checks;

import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;

/**
 * Reports a piece that goes out without a word on how long and where it keeps.
 *
 * <p>It goes out once it is released, or on a sheet for homes. How long it keeps is for the kitchen to
 * find out, so no fix invents a figure.
 */
public final class MissingShelf implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("missing-shelf", "a piece does not say how long and where it keeps");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return released(subject).or(() -> shown(subject)).stream().toList();
  }

  private static Optional<Finding> released(Subject subject) {
    return subject
        .declaration()
        .flatMap(
            d -> d instanceof Product product ? Optional.of(product.facts()) : Optional.empty())
        .flatMap(facts -> facts
            .wordOf("status")
            .filter(status -> status.value().equals("released"))
            .flatMap(status -> finding(facts, status.span(), "this is released, and")));
  }

  private static Optional<Finding> shown(Subject subject) {
    return ShownSheet.of(subject)
        .filter(sheet -> sheet.isFor("home"))
        .filter(sheet -> sheet.shown() instanceof Product)
        .filter(sheet -> !sheet.facts().says("status", "released"))
        .flatMap(sheet -> finding(
                sheet.facts(),
                sheet.name().span(),
                "`" + sheet.name().value() + "`, which this sheet shows,")
            .map(finding -> finding
                .as(Severity.WARNING)
                .withRelated(
                    sheet.entry().origin(sheet.shown().name().span()), "what the sheet shows")));
  }

  private static Optional<Finding> finding(Facts facts, Span span, String who) {
    Optional<Statement> shelf = facts.first("shelf");
    String lacks =
        shelf.map(MissingShelf::lacks).orElse("does not say how long and where it keeps");
    return lacks.isEmpty()
        ? Optional.empty()
        : Optional.of(INFO.at(span, "%s", who + " " + lacks)
            .because("it is kept too long or too warm; write `shelf` with a time and a place, as"
                + " in `shelf 3 months at 15-18 °C`, once they are known"));
  }

  private static String lacks(Statement shelf) {
    if (shelf.objectFigure(Unit.Dimension.TIME).isEmpty()) {
      return "does not say how long it keeps";
    }
    return shelf.has(Connective.AT) || shelf.has(Connective.BELOW) || shelf.has(Connective.IN)
        ? ""
        : "does not say where it keeps";
  }
}
