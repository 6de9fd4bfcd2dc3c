package dev.kettlemark.features;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.UseRange;
import dev.kettlemark.quantity.Display;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What some lines of a formula ask for, on every basis.
 *
 * @param formula the formula
 * @param lines its lines that are spoken of; may be empty
 */
record AmountsHere(ComputedFormula formula, List<LineAmount> lines) {

  AmountsHere {
    lines = List.copyOf(lines);
  }

  /** All lines of one material. */
  static AmountsHere of(ComputedFormula formula, String material) {
    return new AmountsHere(
        formula,
        formula.amounts().lines().stream()
            .filter(line -> line.line().ingredient().value().equals(material))
            .toList());
  }

  /** Adds the amounts and the table of bases; nothing where the formula weighs none of it in. */
  void addTo(Markdown markdown) {
    if (lines.isEmpty()) {
      return;
    }
    List<String> told = new ArrayList<>();
    lines.forEach(line -> told.add(amount(line)));
    markdown.paragraph(String.join("  \n", told));
    if (lines.stream().anyMatch(line -> line.share().isKnown())) {
      List<String> head =
          formula.isNominal() ? List.of("of", "share") : List.of("of", "share", "which weighs");
      markdown.table(
          head, BasisShare.all(formula, lines).stream().map(this::row).toList());
    }
  }

  /** The dose beside what is usual, one sentence for each range. */
  List<String> doses(Ingredient ingredient) {
    return ingredient.uses().stream().map(this::dose).toList();
  }

  /** What is usual, where nothing is weighed in to compare it with. */
  static List<String> usual(Ingredient ingredient) {
    return ingredient.uses().stream().map(use -> usual(use) + ".").toList();
  }

  private static String usual(UseRange use) {
    String range = Display.trimmed(use.low().percent(), 3) + "–"
        + Display.trimmed(use.high().percent(), 3) + " % of " + use.basis().words();
    String source = use.source().map(s -> " (" + Markdown.plain(s) + ")").orElse("");
    return "Usual dose " + range + source;
  }

  private String dose(UseRange use) {
    Optional<BasisShare> here =
        lines.isEmpty() ? Optional.empty() : BasisShare.of(formula, lines, use.basis());
    return usual(use)
        + here.map(dose -> ": " + Display.percent(dose.share()) + " here, " + verdict(use, dose))
            .orElse("")
        + ".";
  }

  private static String verdict(UseRange use, BasisShare dose) {
    if (use.contains(dose.share())) {
      return "within it";
    }
    return dose.share().compareTo(use.low()) < 0 ? "below it" : "above it";
  }

  private String amount(LineAmount line) {
    String stage = formula.formula().stages().get(line.stage()).name().value();
    String share = line.share()
        .fold(
            known -> Display.percent(WrittenFormula.ratio(known)),
            unknown -> "unknown: " + unknown.because());
    String weight = formula
        .amounts()
        .grams(line)
        .map(grams -> " · " + Display.mass(WrittenFormula.mass(grams)))
        .orElse("");
    return "**" + share + weight + "** in stage " + Markdown.code(stage);
  }

  private List<String> row(BasisShare share) {
    String percent = Display.percent(share.share());
    return formula.isNominal()
        ? List.of(share.basis(), percent)
        : List.of(share.basis(), percent, Display.mass(share.weight()));
  }
}
