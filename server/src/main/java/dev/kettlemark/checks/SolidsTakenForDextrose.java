package dev.kettlemark.checks;

import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reports a starch syrup with far too little solids: most often its dextrose equivalent was taken for
 * them.
 */
public final class SolidsTakenForDextrose implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "solids-taken-for-dextrose", "a starch syrup is said to hold far more water than any has");

  private static final Pattern STARCH_SYRUP =
      Pattern.compile("(glucose|corn|maltose|starch|wheat)-syrup.*");

  /** Solids as starch syrups are sold; common practice, no source. */
  private static final String USUAL_SOLIDS = "80 %";

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return OwnIngredient.of(subject).filter(SolidsTakenForDextrose::isStarchSyrup).stream()
        .flatMap(own -> own
            .composition()
            .toOptional()
            .map(composition -> composition.solids())
            .filter(
                solids -> solids.compareTo(subject.threshold(Threshold.STARCH_SYRUP_SOLIDS)) < 0)
            .map(solids -> finding(subject, own, solids))
            .stream())
        .toList();
  }

  private static boolean isStarchSyrup(Ingredient own) {
    return own.form().filter("syrup"::equals).isPresent()
        && (own.facts().first("DE").isPresent()
            || STARCH_SYRUP.matcher(own.name().value()).matches());
  }

  private static Finding finding(Subject subject, Ingredient own, Ratio solids) {
    Statement contains = own.facts().first("contains").orElseThrow();
    Finding finding = INFO.at(
            contains.span(),
            "`%s` has %s solids; starch syrups have about %s",
            own.name().value(),
            Display.percent(solids),
            USUAL_SOLIDS)
        .because("the dextrose equivalent tells how far the starch is split, not how much of it is"
            + " there; the cook-off comes out wrong by half");
    return solidsFigure(contains)
        .map(figure -> finding.withFix(asEquivalent(subject, own, figure)))
        .orElse(finding);
  }

  /** The figure right before the word {@code solids}. */
  private static Optional<Located<Quantity>> solidsFigure(Statement contains) {
    Optional<Located<Quantity>> last = Optional.empty();
    for (Located<Operand> operand : contains.objects()) {
      if (operand.value() instanceof Operand.Figure figure) {
        last = Optional.of(new Located<>(figure.quantity(), operand.span()));
      } else if (operand.value() instanceof Operand.Name name && name.word().equals("solids")) {
        return last.filter(figure -> figure.value().measures(Unit.Dimension.SHARE));
      }
    }
    return Optional.empty();
  }

  private static Fix asEquivalent(Subject subject, Ingredient own, Located<Quantity> figure) {
    List<TextEdit> edits = new ArrayList<>();
    Columns columns = new Columns(subject.section());
    edits.add(columns.replace(figure.span(), USUAL_SOLIDS));
    boolean hasEquivalent = own.facts().first("DE").isPresent();
    String equivalent = Display.trimmed(figure.value().middle().doubleValue(), 1);
    if (!hasEquivalent) {
      edits.add(columns.addFact(Optional.empty(), "DE", equivalent));
    }
    String title = "Write `" + USUAL_SOLIDS + " solids`";
    return new Fix(hasEquivalent ? title : title + " and `DE " + equivalent + "`", edits);
  }
}
