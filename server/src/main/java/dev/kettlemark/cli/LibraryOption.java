package dev.kettlemark.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The option by which a command is told of the library that it asks. */
final class LibraryOption {

  @Option(
      names = "--in",
      paramLabel = "FOLDER",
      description = "The library; the current folder if not given.")
  private Optional<Path> folder = Optional.empty();

  /** The library, read. */
  LibraryFolder read(Terminal terminal) {
    return NamedEntry.library(folder, terminal);
  }
}
