package dev.kettlemark.cli;

import dev.kettlemark.checks.Severity;
import dev.kettlemark.files.KettleFolder;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kettlemark check}: the findings of whole libraries or of single files. */
@Command(
    name = "check",
    header = "Check formulas and say what is wrong, why, and how to mend it.",
    sortOptions = false,
    description = {
      "",
      "A folder is one library. A file is checked within the library of its folder, and only its own"
          + " findings are shown. What a formula accepts with a reason is counted and not shown, unless"
          + " somebody may get hurt."
    },
    parameterListHeading = "%nParameters:%n",
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Exit codes: 0 no error was found, 1 errors were found or --dry-run would change something,"
          + " 2 something could not be read or written.",
      "",
      "Line: one line for each finding, as compilers write it and editors read it:"
          + " path:line:column: severity: message [rule]. A severity is error, warning, note or hint.",
      "",
      "JSON: {findings: [{path, start, end, severity, rule, message, note, fixes: [{title, edits:"
          + " [{start, end, text}]}], related: [{path, start, end, message}]}], accepted: [the same with"
          + " reason and until], summary: {files, formulas, error, warning, information, hint,"
          + " accepted}, unreadable: [text]}. A place is {line,"
          + " column}, both from 1, columns in UTF-16 units; an end stands behind the last"
          + " character. An edit replaces what lies between its places by its text.",
      "",
      "SARIF: version 2.1.0, with the page of each rule as its help and the fixes as changes; what is"
          + " accepted is a suppressed result.",
      "",
      "Examples:",
      "  kettlemark check samples/gannet-slip",
      "  kettlemark check --format sarif . > kettlemark.sarif",
      "  kettlemark check --severity warning --warnings-as-errors formulas",
      "  kettlemark check --fix --dry-run formulas"
    })
final class CheckCommand implements Callable<Integer> {

  /** How findings are written. */
  enum Format {
    TEXT,
    LINE,
    JSON,
    SARIF
  }

  private final Terminal terminal;
  private final Supplier<Paint> paint;
  private final Cores cores;

  @Parameters(
      paramLabel = "PATH",
      arity = "0..*",
      description = "Files and folders to check; the current folder if none is given.")
  private List<String> paths = new ArrayList<>();

  @Option(
      names = "--in",
      paramLabel = "FOLDER",
      description = "The library that the files belong to; their own folder if not given.")
  private Optional<Path> library = Optional.empty();

  @Option(
      names = {"-f", "--format"},
      paramLabel = "FORMAT",
      description = "text, line, json or sarif; text if not given.")
  private Format format = Format.TEXT;

  @Option(
      names = "--severity",
      paramLabel = "LEVEL",
      description = "Leave out what matters less than this: error, warning, information or hint.")
  private Severity severity = Severity.HINT;

  @Option(
      names = "--warnings-as-errors",
      description = "Exit with 1 also where only warnings were found.")
  private boolean warningsAsErrors;

  @Option(
      names = "--fix",
      description =
          "First mend what is beyond doubt, such as .5 for 0.5, and say what was changed.")
  private boolean fix;

  @Option(names = "--dry-run", description = "With --fix: write nothing; show what would change.")
  private boolean dryRun;

  CheckCommand(Terminal terminal, Supplier<Paint> paint) {
    this(terminal, paint, Cores.all());
  }

  CheckCommand(Terminal terminal, Supplier<Paint> paint, Cores cores) {
    this.terminal = terminal;
    this.paint = paint;
    this.cores = cores;
  }

  @Override
  public Integer call() {
    if (dryRun && !fix) {
      throw new UsageMistake("--dry-run says what --fix would change, so it needs --fix");
    }
    LocalDate today = terminal.today();
    if (fix) {
      PrintWriter report = format == Format.TEXT ? terminal.out() : terminal.err();
      FixRun run = new FixRun(report, paint.get(), dryRun, cores);
      run.mend(LibraryFolder.of(paths, library, today, cores));
      run.problems().forEach(problem -> KettlemarkCommand.complain(terminal.err(), problem));
      if (dryRun || !run.problems().isEmpty()) {
        return run.problems().isEmpty()
            ? run.changed() > 0 ? ExitCode.FOUND : ExitCode.DONE
            : ExitCode.NOT_RUN;
      }
    }
    CheckResult result =
        CheckResult.of(LibraryFolder.of(paths, library, today, cores), severity, cores);
    if (result.files() == 0 && result.problems().isEmpty()) {
      throw new UsageMistake("there is no " + KettleFolder.SUFFIX + " file to check");
    }
    switch (format) {
      case TEXT -> new FindingsText(terminal.out(), paint.get(), terminal.width()).write(result);
      case LINE -> FindingsLines.write(result, terminal.out());
      case JSON -> Json.write(FindingsJson.of(result), terminal.out());
      case SARIF -> Json.write(new FindingsSarif(Path.of("")).of(result), terminal.out());
    }
    result.problems().forEach(problem -> KettlemarkCommand.complain(terminal.err(), problem));
    return exitCode(result);
  }

  private int exitCode(CheckResult result) {
    if (!result.problems().isEmpty()) {
      return ExitCode.NOT_RUN;
    }
    long grave =
        result.count(Severity.ERROR) + (warningsAsErrors ? result.count(Severity.WARNING) : 0);
    return grave > 0 ? ExitCode.FOUND : ExitCode.DONE;
  }
}
