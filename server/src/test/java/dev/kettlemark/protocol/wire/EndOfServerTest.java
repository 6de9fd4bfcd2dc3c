package dev.kettlemark.protocol.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

/**
 * That the server ends when its client has, and only then.
 *
 * <p>The rule is LSP 3.17's ("Initialize Request" on {@code processId}, "Exit Notification" on the codes); the times,
 * one second after the end of input and five after the death of the parent, are our own promise.
 */
class EndOfServerTest {

  private static final Duration AFTER_INPUT = Duration.ofSeconds(1);
  private static final Duration AFTER_PARENT = Duration.ofSeconds(5);

  @Test
  void endsSoonAfterItsInput() throws Exception {
    try (Conversation server = Conversation.begun()) {
      server.lives();
      assertTimeoutPreemptively(AFTER_INPUT, () -> assertEquals(1, server.hangUp()));
    }
  }

  @Test
  void endsWithZeroWhenTheInputEndsAfterShutdown() throws Exception {
    try (Conversation server = Conversation.begun()) {
      assertEquals(0, server.code("shutdown", "null"));
      assertTimeoutPreemptively(AFTER_INPUT, () -> assertEquals(0, server.hangUp()));
    }
  }

  @Test
  void endsInsideAHeaderAndInsideABody() throws Exception {
    for (String half : List.of("Content-Len", "Content-Length: 500\r\n\r\n{\"jsonrpc\"")) {
      try (Conversation server = Conversation.begun()) {
        server.raw(half);
        assertTimeoutPreemptively(AFTER_INPUT, () -> assertEquals(1, server.hangUp()), half);
      }
    }
  }

  @Test
  void endsWhileACallDoesNotReturn() throws Exception {
    try (Conversation server = Conversation.begun()) {
      server.say("{'jsonrpc': '2.0', 'id': 1, 'method': 'probe/block', 'params': {'size': 20000}}");
      server.say("{'jsonrpc': '2.0', 'id': 2, 'method': 'probe/never'}");
      assertTimeoutPreemptively(AFTER_INPUT, () -> assertEquals(1, server.hangUp()));
    }
  }

  @Test
  void endsWhenItsOutputIsClosed() throws Exception {
    try (Conversation server = Conversation.deaf(OptionalLong.empty())) {
      server.stopListening();
      server.tell("exit-me-not", "{}");
      server.say("{'jsonrpc': '2.0', 'id': 1, 'method': 'probe/echo', 'params': {'text': 'x'}}");
      assertEquals(1, server.exitCode());
    }
  }

  /** The answers are many times what the pipe holds. */
  @Test
  void answersAllThatAClientAskedBeforeItReads() throws Exception {
    assertTimeoutPreemptively(Duration.ofSeconds(9), () -> {
      try (Conversation server = Conversation.deaf(OptionalLong.empty())) {
        server.say(
            "{'jsonrpc': '2.0', 'id': 0, 'method': 'initialize', 'params': {'capabilities': {}}}");
        for (int id = 1; id <= 2000; id++) {
          server.say("{'jsonrpc': '2.0', 'id': " + id
              + ", 'method': 'probe/large', 'params': {'size': 5000}}");
        }
        server.listen();
        for (int id = 0; id <= 2000; id++) {
          assertEquals(0, server.codeOf(Integer.toString(id)));
        }
        server.lives();
      }
    });
  }

  /** Once the outgoing box is full the calls wait, but the reader still sees the end of input. */
  @Test
  void endsThoughItsClientNeverReads() throws Exception {
    try (Conversation server = Conversation.deaf(OptionalLong.empty())) {
      server.say(
          "{'jsonrpc': '2.0', 'id': 0, 'method': 'initialize', 'params': {'capabilities': {}}}");
      for (int id = 1; id <= 40; id++) {
        server.say("{'jsonrpc': '2.0', 'id': " + id
            + ", 'method': 'probe/large', 'params': {'size': 2000000}}");
      }
      assertTimeoutPreemptively(Duration.ofSeconds(2), () -> assertEquals(1, server.hangUp()));
    }
  }

  @Test
  void endsWithTheParentThatInitializeNames() throws Exception {
    Process parent = java("dev.kettlemark.protocol.wire.FakeServerMain");
    try (Conversation server = Conversation.fresh()) {
      assertEquals(
          0, server.code("initialize", "{'processId': " + parent.pid() + ", 'capabilities': {}}"));
      server.lives();
      parent.destroyForcibly();
      assertTimeoutPreemptively(AFTER_PARENT, () -> assertEquals(1, server.exitCode()));
    } finally {
      parent.destroyForcibly();
    }
  }

  @Test
  void endsAtOnceWhenTheParentIsAlreadyGone() throws Exception {
    Process parent = java("no.such.Class");
    parent.waitFor();
    try (Conversation server = Conversation.deaf(OptionalLong.of(parent.pid()))) {
      assertTimeoutPreemptively(AFTER_PARENT, () -> assertEquals(1, server.exitCode()));
    }
  }

  /** A killed client whose own parent does not wait for it stays in the process table. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void endsWithAParentThatNobodyHasBuried() throws Exception {
    Process keeper = new ProcessBuilder("sh", "-c", "sleep 0.2 & echo $!; exec sleep 20").start();
    try (BufferedReader lines = keeper.inputReader()) {
      OptionalLong parent = OptionalLong.of(Long.parseLong(lines.readLine()));
      try (Conversation server = Conversation.deaf(parent)) {
        assertTimeoutPreemptively(AFTER_PARENT, () -> assertEquals(1, server.exitCode()));
      }
    } finally {
      keeper.destroyForcibly();
    }
  }

  @Test
  void leavesNoThreadBehindThatKeepsTheProcessAlive() throws Exception {
    try (Conversation server = Conversation.begun()) {
      server.lives();
      List<String> keepers = Thread.getAllStackTraces().keySet().stream()
          .filter(thread -> thread.getName().startsWith("kettlemark-") && !thread.isDaemon())
          .map(Thread::getName)
          .toList();
      assertEquals(List.of(), keepers);
    }
  }

  @Test
  void givesTheProcessItsExitCode() throws Exception {
    String initialize =
        "{'jsonrpc': '2.0', 'id': 1, 'method': 'initialize', 'params': {'capabilities': {}}}";
    String shutdown = "{'jsonrpc': '2.0', 'id': 2, 'method': 'shutdown'}";
    String exit = "{'jsonrpc': '2.0', 'method': 'exit'}";
    assertEquals(0, exitCodeOf(initialize, shutdown, exit));
    assertEquals(1, exitCodeOf(initialize, exit));
    assertEquals(1, exitCodeOf(initialize));
  }

  /** The log of many failures fits no pipe, and nobody reads this one. */
  @Test
  void isNotHeldUpByALogThatNobodyReads() throws Exception {
    Process server = java("dev.kettlemark.protocol.wire.FakeServerMain");
    try (OutputStream toServer = server.getOutputStream()) {
      send(
          toServer,
          "{'jsonrpc': '2.0', 'id': 1, 'method': 'initialize', 'params': {'capabilities': {}}}");
      for (int id = 2; id < 300; id++) {
        send(
            toServer,
            "{'jsonrpc': '2.0', 'id': " + id
                + ", 'method': 'probe/fail', 'params': {'text': 'exception'}}");
      }
      // What is still to be answered at the end may be left out, so the end waits for the last answer.
      CompletableFuture.runAsync(() -> readUntil("\"id\":299", server.getInputStream()))
          .get(30, TimeUnit.SECONDS);
      send(toServer, "{'jsonrpc': '2.0', 'id': 300, 'method': 'shutdown'}");
      send(toServer, "{'jsonrpc': '2.0', 'method': 'exit'}");
      assertTrue(server.waitFor(9, TimeUnit.SECONDS), "the server waits for its log");
      assertEquals(0, server.exitValue());
    } finally {
      server.destroyForcibly();
    }
  }

  private static void readUntil(String awaited, InputStream answers) {
    StringBuilder last = new StringBuilder();
    try {
      while (!awaited.contentEquals(last)) {
        int next = answers.read();
        assertTrue(next >= 0, () -> "no " + awaited);
        last.append((char) next);
        last.delete(0, Math.max(0, last.length() - awaited.length()));
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static int exitCodeOf(String... messages) throws Exception {
    Process server = java("dev.kettlemark.protocol.wire.FakeServerMain");
    try {
      try (OutputStream toServer = server.getOutputStream()) {
        for (String message : messages) {
          send(toServer, message);
        }
      }
      assertTrue(server.waitFor(9, TimeUnit.SECONDS), "the server stays");
      return server.exitValue();
    } finally {
      server.destroyForcibly();
    }
  }

  private static void send(OutputStream toServer, String message) throws IOException {
    byte[] body = message.replace('\'', '"').getBytes(StandardCharsets.UTF_8);
    toServer.write(
        ("Content-Length: " + body.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
    toServer.write(body);
    toServer.flush();
  }

  /** Starts a class of the test class path in a process of its own. */
  static Process java(String mainClass, String... options) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of(options));
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), mainClass));
    return new ProcessBuilder(command).start();
  }
}
