package dev.kettlemark.cli;

import dev.kettlemark.files.TextFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The option by which a command is told where to write. */
final class OutOption {

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Write to a file; to the terminal if not given.")
  private Optional<Path> out = Optional.empty();

  /** Writes a whole text. */
  void write(String text, Terminal terminal) {
    if (out.isEmpty()) {
      terminal.out().print(text);
      return;
    }
    try {
      if (!Files.exists(out.get())) {
        Files.createFile(out.get());
      }
      TextFile.write(out.get(), text);
    } catch (IOException failure) {
      throw new UsageMistake(KettleFiles.cannot("write", out.get(), failure));
    }
  }
}
