package dev.kettlemark.cli;

import dev.kettlemark.features.NextTrial;
import dev.kettlemark.features.TrialReport;
import dev.kettlemark.features.TrialReportText;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kettlemark trials}: what was measured beside what was predicted. */
@Command(
    name = "trials",
    header = "Compare trials with predictions, and tell how the kitchen differs.",
    sortOptions = false,
    description = {
      "",
      "Each measurement stands beside what the model predicts for that very batch in that very house."
          + " A cooked weight is turned into water, and the water into the temperature at which it"
          + " boils, to hold the thermometer against the scale. The end sums up how each kitchen"
          + " differs from the model. Such a correction is shown, never applied; fewer than three"
          + " trials are too few for one. Trials of an older version, and those made otherwise than"
          + " written, do not count for it."
    },
    parameterListHeading = "%nParameters:%n",
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Exit codes: 0 shown, 2 there is no such formula or the folder cannot be read.",
      "",
      "Example:",
      "  kettlemark trials heather-nougat --in samples/gannet-slip"
    })
final class TrialsCommand implements Callable<Integer> {

  /** How the comparison is written. */
  enum Format {
    TEXT,
    JSON
  }

  private final Terminal terminal;

  @Parameters(
      arity = "0..1",
      paramLabel = "FORMULA",
      description = "Only the trials of this formula or variant; all if not given.")
  private Optional<String> formula = Optional.empty();

  @Mixin
  private LibraryOption library = new LibraryOption();

  @Option(
      names = {"-f", "--format"},
      paramLabel = "FORMAT",
      description = "text or json; text if not given.")
  private Format format = Format.TEXT;

  @Option(
      names = "--next",
      description = "Write the section of the formula's next trial instead, with what is predicted"
          + " for it as comments.")
  private boolean next;

  TrialsCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    LibraryFolder folder = library.read(terminal);
    formula.ifPresent(name -> NamedEntry.formula(folder, name));
    if (next) {
      return next(folder);
    }
    TrialReport report = TrialReport.of(folder.snapshot(), formula);
    if (format == Format.JSON) {
      Json.write(TrialsJson.of(report), terminal.out());
    } else if (report.trials().isEmpty()) {
      terminal.out().println("no trials");
    } else {
      TrialReportText.lines(report, terminal.width())
          .forEach(line -> terminal.out().println(Visible.of(line)));
    }
    return ExitCode.DONE;
  }

  private Integer next(LibraryFolder folder) {
    NextTrial trial = formula
        .flatMap(name -> NextTrial.of(folder.snapshot(), name))
        .orElseThrow(() -> new UsageMistake("--next needs the name of a formula"));
    trial.text().lines().forEach(line -> terminal.out().println(Visible.of(line)));
    return ExitCode.DONE;
  }
}
