package dev.kettlemark.cli;

import dev.kettlemark.comparison.LibraryComparison;
import dev.kettlemark.features.ChangesText;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code kettlemark changes}: what differs between two states of a library. */
@Command(
    name = "changes",
    header = "Tell what a change of the library does to all its formulas and products.",
    sortOptions = false,
    description = {
      "",
      "A state is a folder, or rev:HEAD~1 and its like for a revision that git keeps of it. First"
          + " stand the sections whose text differs; then each formula, variant and product of which"
          + " anything looks different, with the sections it comes from: amounts, yield, water, water"
          + " activity, glass transition, texture, sweetness, density, energy, allergens, diets,"
          + " claims, cautions and findings. What rounding hides is not told.",
      "",
      "Where the protein or the bloom of a whipping or gelling ingredient differs, the doses are told"
          + " that hold as much of it as before."
    },
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Exit codes: 0 compared, 2 a state cannot be read.",
      "",
      "Example:",
      "  kettlemark changes --in samples/gannet-slip --from rev:HEAD~1"
    })
final class ChangesCommand implements Callable<Integer> {

  /** How the comparison is written. */
  enum Format {
    TEXT,
    JSON
  }

  private final Terminal terminal;

  @Option(
      names = "--from",
      paramLabel = "STATE",
      description = "The earlier state: a folder or rev:REVISION; rev:HEAD if not given.")
  private String from = LibraryState.REVISION + "HEAD";

  @Option(
      names = "--to",
      paramLabel = "STATE",
      description = "The later state; the library as it stands on disk if not given.")
  private Optional<String> to = Optional.empty();

  @Option(
      names = "--in",
      paramLabel = "FOLDER",
      description = "The library; the current folder if not given.")
  private Path library = Path.of(".");

  @Option(
      names = {"-f", "--format"},
      paramLabel = "FORMAT",
      description = "text or json; text if not given.")
  private Format format = Format.TEXT;

  ChangesCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    LibraryState before = LibraryState.of(from, library, terminal);
    LibraryState after = to.map(state -> LibraryState.of(state, library, terminal))
        .orElseGet(() -> LibraryState.folder(library, terminal));
    LibraryComparison comparison = LibraryComparison.of(before.snapshot(), after.snapshot());
    if (format == Format.JSON) {
      Json.write(ChangesJson.of(before.name(), after.name(), comparison), terminal.out());
    } else {
      ChangesText.lines(before.name(), after.name(), comparison, terminal.width())
          .forEach(line -> terminal.out().println(Visible.of(line)));
    }
    return ExitCode.DONE;
  }
}
