package dev.kettlemark.cli;

import dev.kettlemark.files.CacheFolder;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code kettlemark prepare}: an archive of classes, with which the server starts faster. */
@Command(
    name = "prepare",
    header = "Make the server start faster with this Java.",
    sortOptions = false,
    description = {
      "",
      "Runs one short session and keeps the classes that it loaded in an archive. Prints the"
          + " arguments with which an editor starts Java from then on. Java leaves an archive aside"
          + " that does not fit, so that an old one does no harm.",
      ""
    },
    optionListHeading = "%nOptions:%n",
    footer = {"", "Exit codes: 0 made, 2 wrong use, or this Java makes no archive there."})
final class PrepareCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Where to keep the archive; by default in the cache of this user.")
  private @Nullable Path out;

  PrepareCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws InterruptedException {
    Path program;
    try {
      program = program();
    } catch (URISyntaxException odd) {
      throw new UsageMistake("this program does not know its own file: " + odd.getMessage());
    }
    if (!Files.isRegularFile(program)) {
      throw new UsageMistake("this program runs from loose classes; only its jar has an archive");
    }
    int version = Runtime.version().feature();
    Path java = Path.of(System.getProperty("java.home"), "bin", "java");
    Path file = out == null ? CacheFolder.usual().resolve("classes-" + version + ".archive") : out;
    ClassArchive archive = new ClassArchive(java, version, program);
    try {
      archive.make(file);
    } catch (IOException refused) {
      throw new UsageMistake("no archive: " + refused.getMessage());
    }
    List<String> arguments = new ArrayList<>(ClassArchive.MACHINE);
    arguments.addAll(archive.arguments(file.toAbsolutePath().normalize()));
    terminal.out().println(String.join(" ", arguments));
    return ExitCode.DONE;
  }

  private static Path program() throws URISyntaxException {
    return Path.of(
        PrepareCommand.class.getProtectionDomain().getCodeSource().getLocation().toURI());
  }
}
