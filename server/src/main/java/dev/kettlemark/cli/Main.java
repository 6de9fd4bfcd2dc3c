package dev.kettlemark.cli;

import java.util.Optional;

/** The terminal program. */
public final class Main {

  private Main() {}

  public static void main(String[] arguments) {
    Terminal terminal = Terminal.ofProcess();
    Optional<ServeCommand> plain = ServeCommand.plain(terminal, arguments);
    // Threads of a language server that lost its editor must not keep the program alive.
    System.exit(
        plain.isPresent() ? plain.get().call() : KettlemarkCommand.run(terminal, arguments));
  }
}
