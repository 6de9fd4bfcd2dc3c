package dev.kettlemark.cli;

import dev.kettlemark.protocol.KettlemarkServer;
import dev.kettlemark.protocol.Rehearsal;
import dev.kettlemark.protocol.wire.Journal;
import java.util.List;
import java.util.Optional;
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

  private static final String STDIO = "--stdio";
  private static final String PROCESS = "--clientProcessId=";
  private static final int MOST_DIGITS = 18;

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
      names = STDIO,
      description = "Use standard input and output. It is the only way; many editors say so.")
  void useStandardStreams(boolean asked) {
    // Nothing else is offered, so there is nothing to remember.
  }

  /**
   * The command as editors write it, if it is.
   *
   * <p>Reading the arguments of all commands takes a fifth of a start, and editors need none of it; whatever
   * they write otherwise is read as everybody's.
   */
  static Optional<ServeCommand> plain(Terminal terminal, String... arguments) {
    if (arguments.length == 0 || !arguments[0].equals("serve")) {
      return Optional.empty();
    }
    ServeCommand command = new ServeCommand(terminal);
    for (String argument : List.of(arguments).subList(1, arguments.length)) {
      if (argument.startsWith(PROCESS) && isNumber(argument.substring(PROCESS.length()))) {
        command.clientProcessId = Long.valueOf(argument.substring(PROCESS.length()));
      } else if (!argument.equals(STDIO)) {
        return Optional.empty();
      }
    }
    return Optional.of(command);
  }

  /** Without a pattern: all else of a start waits for this, and the first pattern takes some milliseconds. */
  private static boolean isNumber(String text) {
    return !text.isEmpty()
        && text.length() <= MOST_DIGITS
        && text.chars().allMatch(digit -> digit >= '0' && digit <= '9');
  }

  @Override
  public Integer call() {
    Rehearsal rehearsal = Rehearsal.begin(Version.number());
    // Whatever else writes to standard output would break the protocol.
    System.setOut(System.err);
    Journal.install(System.err);
    OptionalLong parent =
        clientProcessId == null ? OptionalLong.empty() : OptionalLong.of(clientProcessId);
    return KettlemarkServer.serve(
        Version.number(),
        rehearsal.heard(terminal.in()),
        rehearsal.heard(terminal.binaryOut()),
        parent,
        terminal::today);
  }
}
