package dev.kettlemark.cli;

import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** {@code kettlemark answer}: from what is wanted back to what must be set. */
@Command(
    name = "answer",
    header = "Find what to set for a wanted result.",
    synopsisSubcommandLabel = "QUESTION",
    sortOptions = false,
    description = {
      "",
      "Each answer is tried on the whole formula before it is given, and carries its band. Where there"
          + " is no answer, the reason is told, with what can be reached."
    },
    optionListHeading = "%nOptions:%n",
    commandListHeading = "%nQuestions:%n",
    footer = {
      "",
      "Exit codes: 0 answered, 2 there is no answer.",
      "",
      "Examples, in samples/gannet-slip:",
      "  kettlemark answer cook heather-nougat first-syrup --moisture 11%%",
      "  kettlemark answer altitude 143 °C --to 1609 m",
      "  kettlemark answer gelatine 12 g --from 250 --to 200"
    })
final class AnswerCommand {

  private AnswerCommand() {}

  /** The command with all its questions. */
  static CommandLine commandLine(Terminal terminal, Supplier<Paint> paint) {
    CommandLine line = new CommandLine(new AnswerCommand());
    line.addSubcommand(new AnswerCookCommand(terminal, paint));
    line.addSubcommand(new AnswerReachCommand(terminal, paint));
    line.addSubcommand(new AnswerDoctorCommand(terminal, paint));
    line.addSubcommand(new AnswerAltitudeCommand(terminal, paint));
    line.addSubcommand(new AnswerGelatineCommand(terminal, paint));
    line.addSubcommand(new AnswerEggWhiteCommand(terminal, paint));
    line.addSubcommand(new AnswerSugarCommand(terminal, paint));
    line.addSubcommand(new AnswerMouldCommand(terminal, paint));
    line.addSubcommand(new AnswerSwapCommand(terminal, paint));
    return line;
  }
}
