package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reports a sheet for American homes that gives temperatures in °C alone.
 *
 * <p>The reader's thermometer shows °F, and who converts in the head at a hot pan slips.
 */
public final class CelsiusOnUsSheet implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "celsius-on-us-sheet", "a sheet for American homes gives temperatures in °C alone");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return ShownSheet.of(subject)
        .filter(sheet -> sheet.isFor("home"))
        .filter(sheet -> !sheet.sheet().facts().says("show", "fahrenheit"))
        .flatMap(sheet -> sheet
            .sheet()
            .language()
            .filter(tag -> tag.value().toUpperCase(Locale.ROOT).endsWith("-US"))
            .flatMap(tag -> sheet.formulas().stream()
                .flatMap(CelsiusOnUsSheet::temperatures)
                .findFirst()
                .map(figure -> INFO.at(
                        tag.span(),
                        "a sheet for `home` in %s shows °C alone, such as %s °C",
                        tag.value(),
                        written(figure))
                    .because("the reader's thermometer shows °F; who converts at a hot pan slips")
                    .withFix(show(subject, sheet)))))
        .stream()
        .toList();
  }

  private static Stream<Located<Operand>> temperatures(ComputedFormula formula) {
    return formula
        .formula()
        .steps()
        .flatMap(step -> step.clauses().stream())
        .flatMap(clause -> clause.operands().stream())
        .filter(operand -> operand.value() instanceof Operand.Figure figure
            && figure.quantity().unit().filter(unit -> unit == Unit.CELSIUS).isPresent());
  }

  private static String written(Located<Operand> operand) {
    double figure = ((Operand.Figure) operand.value()).quantity().low().doubleValue();
    return Display.trimmed(figure, 1);
  }

  private static Fix show(Subject subject, ShownSheet sheet) {
    Optional<Statement> shown = sheet.sheet().facts().first("show");
    return shown
        .map(fact -> Fix.insert("Show °F as well", fact.span().end(), ", fahrenheit"))
        .orElseGet(() -> new Fix(
            "Show °F as well",
            List.of(
                new Columns(subject.section()).addFact(Optional.empty(), "show", "fahrenheit"))));
  }
}
