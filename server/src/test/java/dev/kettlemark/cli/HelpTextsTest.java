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
        Clock.systemUTC());
    return KettlemarkCommand.commandLine(nowhere).getSubcommands().keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("commands")
  void pinsTheHelpOfEachCommand(String command) {
    Run run = Run.of(command, "--help");
    assertEquals(ExitCode.DONE, run.code());
    Pinned.resource("cli/help/" + command + ".txt").check(run.out(), HelpTextsTest.class);
  }

  @Test
  void pinsTheHelpOfTheProgram() {
    Pinned.resource("cli/help/kettlemark.txt").check(Run.of("--help").out(), HelpTextsTest.class);
  }

  @ParameterizedTest
  @MethodSource("commands")
  void fitsEightyCells(String command) {
    assertTrue(Run.of(command, "--help").out().lines().allMatch(line -> Cells.of(line) <= 80));
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
    assertTrue(commands().allMatch(script::contains));
    assertTrue(script.contains("complete -F _complete_kettlemark"));
  }
}
