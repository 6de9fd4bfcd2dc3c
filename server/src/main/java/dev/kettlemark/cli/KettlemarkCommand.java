package dev.kettlemark.cli;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** The program {@code kettlemark}: wires the commands by hand and turns their outcome into exit codes. */
@Command(
    name = "kettlemark",
    header = "Checks, shows and scales formulas for confections and other technical recipes.",
    synopsisSubcommandLabel = "COMMAND",
    versionProvider = Version.class,
    sortOptions = false,
    description = {
      "",
      "A folder of .kettle files is one library: a formula in one file may use the ingredients and"
          + " formulas of all others. A pantry of common ingredients is built in."
    },
    optionListHeading = "%nOptions:%n",
    commandListHeading = "%nCommands:%n",
    footer = {
      "",
      "Start with:",
      "  kettlemark open samples/gannet-slip",
      "  kettlemark check samples/gannet-slip",
      "  kettlemark show egg-honey-nougat --in samples/gannet-slip",
      "  kettlemark scale egg-honey-nougat --in samples/gannet-slip --finished 1618.75g",
      "",
      "Exit codes: 0 done, 1 an error was found, 2 could not run as asked, 3 a fault of the program."
    })
final class KettlemarkCommand {

  /** When to colour the output. */
  enum ColourChoice {
    AUTO,
    ALWAYS,
    NEVER
  }

  private final Terminal terminal;

  @Option(
      names = {"--color", "--colour"},
      paramLabel = "WHEN",
      scope = ScopeType.INHERIT,
      description = "Colour the output: auto, always or never. Auto colours on a terminal unless"
          + " NO_COLOR is set.")
  private ColourChoice colour = ColourChoice.AUTO;

  private KettlemarkCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  /** Runs one command and returns its exit code; all output is written when it returns. */
  static int run(Terminal terminal, String... arguments) {
    try {
      return commandLine(terminal).execute(arguments);
    } finally {
      terminal.out().flush();
      terminal.err().flush();
    }
  }

  /** The whole command tree. */
  static CommandLine commandLine(Terminal terminal) {
    KettlemarkCommand root = new KettlemarkCommand(terminal);
    CommandLine line = new CommandLine(root);
    line.addSubcommand(new OpenCommand(terminal));
    line.addSubcommand(new CheckCommand(terminal, root::paint));
    line.addSubcommand(new ShowCommand(terminal, root::paint));
    line.addSubcommand(new ScaleCommand(terminal, root::paint));
    line.addSubcommand(new LabelCommand(terminal));
    line.addSubcommand(new DrawCommand(terminal));
    line.addSubcommand(new SheetCommand(terminal));
    line.addSubcommand(new PublishCommand(terminal));
    line.addSubcommand(new TrialsCommand(terminal));
    line.addSubcommand(new UsedCommand(terminal));
    line.addSubcommand(new ChangesCommand(terminal));
    line.addSubcommand(new CompareCommand(terminal, root::paint));
    line.addSubcommand(AnswerCommand.commandLine(terminal, root::paint));
    line.addSubcommand(new FormatCommand(terminal, root::paint));
    line.addSubcommand(new ExplainCommand(terminal, root::paint));
    line.addSubcommand(new ServeCommand(terminal));
    line.addSubcommand(new PrepareCommand(terminal));
    line.addSubcommand(new VerifyModelsCommand(terminal, root::paint));
    line.addSubcommand(new CompletionCommand(terminal, line));
    line.getCommandSpec().addOption(versionOption());
    addHelpOption(line);
    line.setOut(terminal.out());
    line.setErr(terminal.err());
    line.setUsageHelpWidth(terminal.width());
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setAbbreviatedOptionsAllowed(false);
    line.setColorScheme(root.scheme());
    line.setParameterExceptionHandler((exception, arguments) -> {
      complain(terminal.err(), String.valueOf(exception.getMessage()));
      terminal
          .err()
          .println(
              "Try `" + exception.getCommandLine().getCommandSpec().qualifiedName() + " --help`.");
      return ExitCode.NOT_RUN;
    });
    line.setExecutionExceptionHandler(KettlemarkCommand::answer);
    line.setExecutionStrategy(parsed -> {
      line.setColorScheme(root.scheme());
      return new CommandLine.RunLast().execute(parsed);
    });
    return line;
  }

  private static void addHelpOption(CommandLine line) {
    line.getSubcommands().values().forEach(KettlemarkCommand::addHelpOption);
    line.getCommandSpec()
        .addOption(OptionSpec.builder("-h", "--help")
            .usageHelp(true)
            .description("Show this help.")
            .build());
  }

  private static OptionSpec versionOption() {
    return OptionSpec.builder("-V", "--version")
        .versionHelp(true)
        .description("Show the version.")
        .build();
  }

  private static int answer(Exception exception, CommandLine line, CommandLine.ParseResult parsed) {
    if (exception instanceof UsageMistake mistake) {
      complain(line.getErr(), mistake.getMessage());
      return ExitCode.NOT_RUN;
    }
    line.getErr()
        .println("kettlemark: this is a fault of the program; please report it with these lines:");
    exception.printStackTrace(line.getErr());
    return ExitCode.BROKEN;
  }

  static void complain(PrintWriter err, String message) {
    err.println("kettlemark: " + message);
  }

  Paint paint() {
    boolean on = switch (colour) {
      case ALWAYS -> true;
      case NEVER -> false;
      case AUTO -> terminal.interactive() && !terminal.wantsNoColour();
    };
    return on ? Paint.coloured() : Paint.plain();
  }

  private CommandLine.Help.ColorScheme scheme() {
    return CommandLine.Help.defaultColorScheme(paint().isOn() ? Ansi.ON : Ansi.OFF);
  }
}
