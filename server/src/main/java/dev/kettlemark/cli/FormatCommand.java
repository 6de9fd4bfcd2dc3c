package dev.kettlemark.cli;

import dev.kettlemark.features.Formatter;
import dev.kettlemark.files.TextFile;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kettlemark format}: lays texts out. */
@Command(
    name = "format",
    header = "Lay texts out as recipes on paper.",
    sortOptions = false,
    description = {
      "",
      "Changes space, blank lines and spellings of units only; no line says anything else afterwards,"
          + " and a second run changes nothing. A line that cannot be read is left as it is. Each file"
          + " is replaced in one step, so that no reader finds a half-written one."
    },
    parameterListHeading = "%nParameters:%n",
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Exit codes: 0 done, 1 with --check or --diff: something would change, 2 something could not be"
          + " read or written.",
      "",
      "Examples:",
      "  kettlemark format samples/gannet-slip",
      "  kettlemark format --check --diff .",
      "  kettlemark format - < nougat.kettle"
    })
final class FormatCommand implements Callable<Integer> {

  private static final String STANDARD_INPUT = "-";

  private final Terminal terminal;
  private final Supplier<Paint> paint;

  @Parameters(
      paramLabel = "PATH",
      arity = "0..*",
      description = "Files and folders; - for the standard input, written to the standard output;"
          + " the current folder if none is given.")
  private List<String> paths = new ArrayList<>();

  @Option(names = "--check", description = "Write nothing; name what would change.")
  private boolean check;

  @Option(names = "--diff", description = "Write nothing; show what would change.")
  private boolean diff;

  FormatCommand(Terminal terminal, Supplier<Paint> paint) {
    this.terminal = terminal;
    this.paint = paint;
  }

  /** What became of the files of one run. */
  private static final class Tally {
    private int files;
    private int changed;
    private int failed;
  }

  @Override
  public Integer call() {
    Tally tally = new Tally();
    for (String typed : paths.isEmpty() ? List.of(".") : paths) {
      if (typed.equals(STANDARD_INPUT)) {
        formatStandardInput(tally);
      } else {
        files(typed, tally).forEach(file -> formatFile(file, tally));
      }
    }
    if (!paths.contains(STANDARD_INPUT)) {
      terminal.out().println(summary(tally));
    }
    if (tally.failed > 0) {
      return ExitCode.NOT_RUN;
    }
    return writesNothing() && tally.changed > 0 ? ExitCode.FOUND : ExitCode.DONE;
  }

  private List<Path> files(String typed, Tally tally) {
    Path path = KettleFiles.path(typed);
    if (!Files.exists(path)) {
      throw new UsageMistake("there is no file or folder " + KettleFiles.shown(path));
    }
    return Files.isDirectory(path)
        ? KettleFiles.below(path, problem -> fail(problem, tally))
        : List.of(path);
  }

  private void formatFile(Path file, Tally tally) {
    tally.files++;
    String doing = "read";
    try {
      String before = TextFile.read(file);
      String after = Formatter.format(before);
      if (before.equals(after)) {
        return;
      }
      doing = "write";
      if (!writesNothing()) {
        TextFile.write(file, after);
      }
      tally.changed++;
      if (diff) {
        show(LayoutDiff.of(KettleFiles.shown(file), before, after));
      } else {
        terminal.out().println(paint.get().bold(KettleFiles.shown(file)));
      }
    } catch (IOException failure) {
      fail(KettleFiles.cannot(doing, file, failure), tally);
    }
  }

  private void formatStandardInput(Tally tally) {
    try {
      String before = TextFile.decoded(terminal.in().readAllBytes());
      String after = Formatter.format(before);
      tally.files++;
      tally.changed += before.equals(after) ? 0 : 1;
      if (diff) {
        show(LayoutDiff.of(STANDARD_INPUT, before, after));
      } else if (!check) {
        terminal.out().print(after);
      }
    } catch (IOException failure) {
      fail(KettleFiles.cannot("read", Path.of("standard input"), failure), tally);
    }
  }

  /** For a person without what could move the cursor; for a program exactly as it is. */
  private void show(List<String> lines) {
    PrintWriter out = terminal.out();
    for (String line : lines) {
      String shown = terminal.interactive() ? Visible.of(line) : line;
      out.println(
          line.startsWith("+")
              ? paint.get().good(shown)
              : line.startsWith("-") ? paint.get().bad(shown) : shown);
    }
  }

  private boolean writesNothing() {
    return check || diff;
  }

  private void fail(String problem, Tally tally) {
    tally.failed++;
    KettlemarkCommand.complain(terminal.err(), problem);
  }

  private String summary(Tally tally) {
    String files = tally.files + (tally.files == 1 ? " file" : " files");
    if (tally.changed == 0) {
      return files + ": nothing to change";
    }
    return files + ": " + tally.changed + (writesNothing() ? " would change" : " changed");
  }
}
