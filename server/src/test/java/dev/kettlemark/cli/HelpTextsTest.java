package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Pinned;
import dev.kettlemark.text.Cells;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HelpTextsTest {

  static Stream<String> commands() {
    Terminal nowhere = new Terminal(
        new ByteArrayInputStream(new byte[0]),
        new ByteArrayOutputStream(),
        new PrintWriter(new StringWriter()),
        new PrintWriter(new StringWriter()),
        false,
        Map.of(),
        Clock::systemUTC);
    return KettlemarkCommand.commandLine(nowhere).getSubcommands().entrySet().stream()
        .flatMap(command -> Stream.concat(
            Stream.of(command.getKey()),
            command.getValue().getSubcommands().keySet().stream()
                .map(question -> command.getKey() + " " + question)));
  }

  @ParameterizedTest
  @MethodSource("commands")
  void pinsTheHelpOfEachCommand(String command) {
    Run run = help(command);
    assertEquals(ExitCode.DONE, run.code());
    Pinned.resource("cli/help/" + command.replace(' ', '-') + ".txt")
        .check(run.out(), HelpTextsTest.class);
  }

  private static Run help(String command) {
    return Run.of((command + " --help").split(" "));
  }

  @Test
  void pinsTheHelpOfTheProgram() {
    Pinned.resource("cli/help/kettlemark.txt").check(Run.of("--help").out(), HelpTextsTest.class);
  }

  @ParameterizedTest
  @MethodSource("commands")
  void fitsEightyCells(String command) {
    assertTrue(help(command).out().lines().allMatch(line -> Cells.of(line) <= 80));
  }

  @Test
  void saysItsVersion() {
    assertEquals("kettlemark 0 (not released)\n", Run.of("--version").out());
  }

  @Test
  void asksForACommand() {
    Run run = Run.of();
    assertEquals(ExitCode.NOT_RUN, run.code());
    assertEquals("", run.out());
    assertTrue(run.err().contains("kettlemark --help"));
  }

  @Test
  void refusesAnUnknownOptionAndNamesTheHelp() {
    Run run = Run.of("check", "--colours");
    assertEquals(ExitCode.NOT_RUN, run.code());
    assertTrue(run.err().contains("--colours"));
    assertTrue(run.err().contains("kettlemark check --help"));
  }

  @Test
  void completesEveryCommand() {
    String script = Run.of("completion").out();
    assertTrue(commands().flatMap(c -> Stream.of(c.split(" "))).allMatch(script::contains));
    assertTrue(script.contains("complete -F _complete_kettlemark"));
  }
}
