package dev.kettlemark.features;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Figure;
import dev.kettlemark.labelling.Labels;
import dev.kettlemark.labelling.Market;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Origin;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.quantity.Derivation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What the terminal tells of a whole library, as pages of Markdown for an editor.
 *
 * <p>Tables that are set in columns keep them, in a block of their own.
 */
public final class ReportPages {

  /** Columns of a page beside a text. */
  private static final int WIDTH = 96;

  private static final String WHOLE = "the whole";

  private ReportPages() {}

  /** Where an ingredient, formula or stage is used, and how much of it. */
  public static String used(Snapshot snapshot, String name) {
    return page(
        "Where " + name + " is used",
        WhereUsedText.lines(
            WhereUsed.of(snapshot, name), origin -> address(snapshot.library(), origin), WIDTH));
  }

  /**
   * Trials beside what was predicted.
   *
   * @param formula only its trials; empty for all
   */
  public static String trials(Snapshot snapshot, Optional<String> formula) {
    TrialReport report = TrialReport.of(snapshot, formula);
    return page(
        formula.map(name -> "Trials of " + name).orElse("Trials"),
        report.trials().isEmpty() ? List.of("no trials") : TrialReportText.lines(report, WIDTH));
  }

  /**
   * The draft of a label.
   *
   * @param market its name; empty for those of the house
   * @return empty where the section cannot be worked out, or no market has that name
   */
  public static Optional<String> label(Snapshot snapshot, Entry entry, Optional<String> market) {
    return Labels.label(snapshot, entry).flatMap(label -> {
      List<Market> markets =
          market.map(name -> Market.ofWord(name).stream().toList()).orElseGet(label::markets);
      String text = markets.stream()
          .map(one -> block(LabelText.lines(label, one, WIDTH)))
          .collect(Collectors.joining("\n"));
      return markets.isEmpty()
          ? Optional.empty()
          : Optional.of("# Draft of a label\n\n" + text
              + "\nIt is a draft: check it against current local law.\n");
    });
  }

  /**
   * How the figures of a formula came about.
   *
   * @param value a stage or a figure; empty for all
   * @return empty where the formula has no such stage or figure
   */
  public static Optional<String> explained(ComputedFormula computed, Optional<String> value) {
    FormulaTable table = FormulaTable.of(computed);
    List<String> parts = new ArrayList<>();
    table.stages().stream()
        .filter(stage -> value.isEmpty() || value.get().equals(stage.name()))
        .forEach(stage -> parts.add(stage(stage)));
    for (Figure figure : Figure.values()) {
      if (value.isEmpty() || value.get().equals(figure.word())) {
        parts.add(table
            .totals()
            .explained(figure)
            .fold(
                derivation -> section(WHOLE, figure.title(), derivation),
                unknown ->
                    heading(WHOLE, figure.title()) + "unknown: " + unknown.because() + "\n"));
      }
    }
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "# How the figures of " + table.name() + " came about\n\n" + String.join("\n", parts));
  }

  private static String stage(FormulaTable.StageRows stage) {
    return stage.explained().isEmpty()
        ? heading(stage.name(), "what is weighed in") + "Nothing was computed for it.\n"
        : stage.explained().stream()
            .map(step -> section(stage.name(), step.step(), step.derivation()))
            .collect(Collectors.joining("\n"));
  }

  private static String section(String of, String what, Derivation derivation) {
    return heading(of, what) + DerivationText.of(derivation) + "\n";
  }

  private static String heading(String of, String what) {
    return "## " + of + ", " + what + "\n\n";
  }

  private static String page(String title, List<String> lines) {
    return "# " + title + "\n\n" + block(lines);
  }

  /** Four signs, so that nothing in a title ends the block. */
  private static String block(List<String> lines) {
    return "~~~~text\n" + String.join("\n", lines) + "\n~~~~\n";
  }

  /** {@code heather-nougat.kettle:22}. */
  private static String address(Library library, Origin origin) {
    String file = origin.uri().substring(origin.uri().lastIndexOf('/') + 1);
    return library
        .place(origin)
        .flatMap(place -> library
            .document(place.uri())
            .map(document -> document.text().source().lineAt(place.span().start()) + 1))
        .map(line -> file + ":" + line)
        .orElse(file);
  }
}
