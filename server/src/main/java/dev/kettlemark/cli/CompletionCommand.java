package dev.kettlemark.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** {@code kettlemark completion}: the script that lets a shell complete commands and options. */
@Command(
    name = "completion",
    header = "Print a script that lets bash or zsh complete commands and options.",
    sortOptions = false,
    description = {"", "The script serves both shells.", ""},
    optionListHeading = "%nOptions:%n",
    footer = {"", "In bash and zsh:", "  source <(kettlemark completion)"})
final class CompletionCommand implements Callable<Integer> {

  private final Terminal terminal;
  private final CommandLine program;

  CompletionCommand(Terminal terminal, CommandLine program) {
    this.terminal = terminal;
    this.program = program;
  }

  @Override
  public Integer call() {
    terminal.out().print(AutoComplete.bash(program.getCommandName(), program));
    return ExitCode.DONE;
  }
}
