package dev.kettlemark.cli;

import dev.kettlemark.protocol.KettlemarkServer;
import dev.kettlemark.protocol.wire.Journal;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code kettlemark serve}: the language server for one editor. */
@Command(
    name = "serve",
    header = "Serve an editor by the language server protocol.",
    sortOptions = false,
    description = {
      "",
      "Speaks the protocol on standard input and output, logs to standard error, and ends when the"
          + " editor does. Editors start it; there is nothing to see in a terminal."
    },
    optionListHeading = "%nOptions:%n",
    footer = {"", "Exit codes: 0 the editor took leave, 1 it just went."})
final class ServeCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Option(
      names = "--clientProcessId",
      paramLabel = "PID",
      description = "End when this process does.")
  private @Nullable Long clientProcessId;

  ServeCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Option(
      names = "--stdio",
      description = "Use standard input and output. It is the only way; many editors say so.")
  void useStandardStreams(boolean asked) {
    // Nothing else is offered, so there is nothing to remember.
  }

  @Override
  public Integer call() {
    // Whatever else writes to standard output would break the protocol.
    System.setOut(System.err);
    Journal.install(System.err);
    OptionalLong parent =
        clientProcessId == null ? OptionalLong.empty() : OptionalLong.of(clientProcessId);
    return KettlemarkServer.serve(
        Version.number(), terminal.in(), terminal.binaryOut(), parent, terminal::today);
  }
}
