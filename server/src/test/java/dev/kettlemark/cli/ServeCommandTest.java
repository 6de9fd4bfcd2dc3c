package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Exit codes are those of the Language Server Protocol 3.17, "Exit Notification". */
class ServeCommandTest {

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  private int serve(String... messages) {
    String input = Stream.of(messages)
        .map(message -> "Content-Length: " + message.length() + "\r\n\r\n" + message)
        .collect(Collectors.joining());
    Terminal terminal = new Terminal(
        new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
        out,
        new PrintWriter(new StringWriter()),
        new PrintWriter(new StringWriter()),
        false,
        Map.of(),
        Clock::systemUTC);
    return KettlemarkCommand.run(terminal, "serve", "--stdio");
  }

  @Test
  void endsWithZeroAfterAShutdown() {
    int code = serve(
        "{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":\"initialize\",\"params\":{\"capabilities\":{}}}",
        "{\"jsonrpc\":\"2.0\",\"id\":2,\"method\":\"shutdown\"}",
        "{\"jsonrpc\":\"2.0\",\"method\":\"exit\"}");
    assertEquals(ExitCode.DONE, code);
    assertTrue(out.toString(StandardCharsets.UTF_8).contains("\"kettlemark\""));
  }

  @Test
  void endsWithOneWithoutAShutdown() {
    assertEquals(ExitCode.FOUND, serve("{\"jsonrpc\":\"2.0\",\"method\":\"exit\"}"));
  }

  /** What editors write needs no other command; anything else is read, and refused, as everybody's. */
  @ParameterizedTest
  @CsvSource(
      value = {
        "serve | true",
        "serve --stdio | true",
        "serve --stdio --clientProcessId=4711 | true",
        "serve --clientProcessId 4711 | false",
        "serve --clientProcessId=x | false",
        "serve --clientProcessId=99999999999999999999 | false",
        "serve --help | false",
        "serve --socket=9 | false",
        "check | false",
        "--version | false"
      },
      delimiter = '|')
  void knowsTheCommandAsEditorsWriteIt(String line, boolean isPlain) {
    assertEquals(
        isPlain,
        ServeCommand.plain(Terminal.ofProcess(), line.strip().split(" ")).isPresent());
  }
}
