package dev.kettlemark.cli;

import static dev.kettlemark.features.TextTable.Align.LEFT;

import dev.kettlemark.analysis.Figure;
import dev.kettlemark.checks.Rule;
import dev.kettlemark.checks.RuleInfo;
import dev.kettlemark.checks.RulePages;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.features.FormulaTable;
import dev.kettlemark.features.FormulaTable.StageRows;
import dev.kettlemark.features.TextTable;
import dev.kettlemark.features.ThresholdText;
import dev.kettlemark.library.Thresholds;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.reading.Suggestions;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kettlemark explain}: the page of a rule, or how the figures of a formula came about. */
@Command(
    name = "explain",
    header = "Explain a rule, or how the figures of a formula came about.",
    sortOptions = false,
    description = {
      "",
      "For a rule: what it finds, why that matters, an example and a better one. For a threshold of the"
          + " rules: its usual value, the reason and the source. For a formula: each computed figure"
          + " with its equation, its inputs and its source. Without a name: the list of all rules."
    },
    parameterListHeading = "%nParameters:%n",
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Exit codes: 0 explained, 2 there is no such rule, formula or stage.",
      "",
      "Examples:",
      "  kettlemark explain missing-unit",
      "  kettlemark explain total-tolerance",
      "  kettlemark explain egg-honey-nougat first-syrup --in samples/gannet-slip",
      "  kettlemark explain egg-honey-nougat water-activity --in samples/gannet-slip",
      "  kettlemark explain egg-honey-nougat texture --of first-syrup --in samples/gannet-slip"
    })
final class ExplainCommand implements Callable<Integer> {

  /** Below the ids, which stand behind {@code warning} and two spaces. */
  private static final int SUMMARY_INDENT = 9;

  private final Terminal terminal;
  private final Supplier<Paint> paint;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "RULE|FORMULA",
      description =
          "The id of a rule, the word of a threshold, or the name of a formula or variant.")
  private Optional<String> name = Optional.empty();

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "VALUE",
      description =
          "A stage of the formula, or a figure such as moisture, water-activity, doctor-share,"
              + " glass-transition, texture or density; all of them if not given.")
  private Optional<String> value = Optional.empty();

  @Option(
      names = "--of",
      paramLabel = "STAGE",
      description = "The stage whose figure is asked for; the whole formula if not given.")
  private Optional<String> stage = Optional.empty();

  @Option(
      names = "--in",
      paramLabel = "FOLDER",
      description = "The library of the formula; the current folder if not given.")
  private Optional<Path> library = Optional.empty();

  ExplainCommand(Terminal terminal, Supplier<Paint> paint) {
    this.terminal = terminal;
    this.paint = paint;
  }

  @Override
  public Integer call() {
    PrintWriter out = terminal.out();
    if (name.isEmpty()) {
      rules(terminal.width()).forEach(out::println);
      return ExitCode.DONE;
    }
    Optional<String> page = RulePages.page(name.get()).map(text -> text + settings(name.get()));
    Optional<Threshold<?>> threshold = Threshold.named(name.get());
    if (page.isEmpty() && threshold.isPresent()) {
      page = threshold.map(ThresholdText::page);
    }
    if (page.isPresent()) {
      MarkdownPage.lines(page.get(), paint.get(), terminal.width()).forEach(out::println);
    } else {
      explainFormula(name.get());
    }
    return ExitCode.DONE;
  }

  /** What of a rule a house may set; empty where it goes by no threshold. */
  private static String settings(String rule) {
    List<Threshold<?>> thresholds = RulePages.thresholds(rule);
    return thresholds.isEmpty()
        ? ""
        : "\n## What a house may set\n\n"
            + "A line of its `house` section sets a limit; the reason belongs behind it.\n\n"
            + thresholds.stream()
                .map(threshold -> "- `threshold " + threshold.word() + " "
                    + ThresholdText.value(Thresholds.usual(threshold)) + "`: "
                    + threshold.meaning() + "\n")
                .collect(Collectors.joining());
  }

  private void explainFormula(String wanted) {
    LibraryFolder folder = NamedEntry.library(library, terminal);
    if (!NamedEntry.knowsFormula(folder, wanted)) {
      List<String> known = Stream.concat(
              Stream.concat(
                  Rules.all().stream().map(rule -> rule.info().id()), Threshold.words().stream()),
              NamedEntry.formulaNames(folder).stream())
          .toList();
      throw new UsageMistake("no rule, threshold or formula is named `" + Visible.of(wanted) + "`"
          + Suggestions.sentence(wanted, known));
    }
    FormulaTable table = FormulaTable.of(NamedEntry.formula(folder, wanted).computed());
    Explanation explanation = new Explanation(terminal.out(), paint.get(), terminal.width());
    if (value.isEmpty()) {
      explanation.write(table);
      return;
    }
    String part = value.get();
    if (stage.isPresent()) {
      explainStage(explanation, table, stage.get(), part);
      return;
    }
    List<String> parts = Explanation.values(table);
    if (!parts.contains(part)) {
      throw new UsageMistake("`" + wanted + "` has no stage or figure `" + Visible.of(part) + "`"
          + Suggestions.sentence(part, parts));
    }
    if (!explanation.write(table, part)) {
      terminal
          .out()
          .println("Nothing was computed for " + part + ": it only holds what is weighed in.");
    }
  }

  private static void explainStage(
      Explanation explanation, FormulaTable table, String stage, String part) {
    StageRows rows = Explanation.stage(table, stage)
        .orElseThrow(() -> new UsageMistake("`" + table.name() + "` has no stage `"
            + Visible.of(stage) + "`"
            + Suggestions.sentence(
                stage, table.stages().stream().map(StageRows::name).toList())));
    Figure figure = Figure.ofWord(part)
        .orElseThrow(() -> new UsageMistake("no figure is named `" + Visible.of(part) + "`"
            + Suggestions.sentence(part, Explanation.figures())));
    explanation.write(rows, figure);
  }

  /** Every rule with its severity, and what it finds below. */
  private static List<String> rules(int width) {
    TextTable table = new TextTable(0, LEFT, LEFT);
    for (Rule rule : Rules.all()) {
      RuleInfo info = rule.info();
      table.row(info.severity().word(), info.id());
      table.paragraph(info.summary(), SUMMARY_INDENT, width);
    }
    return table.lines(width);
  }
}
