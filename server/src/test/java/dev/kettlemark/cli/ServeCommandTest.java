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
        Clock.systemUTC());
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
}
