package dev.kettlemark.protocol.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What becomes of a call that the server cannot answer; JSON-RPC 2.0 (jsonrpc.org, 2013), section 5.1. */
@Timeout(15)
class FailedCallTest {

  private static final int INTERNAL_ERROR = -32603;

  /** LSP 3.17, "Response Message": the request failed although it was right. */
  private static final int REQUEST_FAILED = -32803;

  @ParameterizedTest
  @CsvSource({
    "probe/fail,exception", "probe/fail,checked", "probe/fail,unsupported", "probe/fail,stack",
    "probe/fail,memory", "probe/fail,assertion", "probe/fail,later", "probe/nothing,''",
    "probe/circle,''", "probe/notNumber,''",
  })
  void isAnsweredWithoutItsStory(String method, String failure) throws Exception {
    try (Conversation server = Conversation.begun()) {
      JsonObject answer = server.ask(method, "{'text': '" + failure + "'}");
      assertEquals(INTERNAL_ERROR, Conversation.code(answer), answer::toString);
      assertFalse(answer.toString().contains("secret"), answer::toString);
      assertFalse(answer.toString().contains("dev.kettlemark"), answer::toString);
      assertTrue(answer.toString().length() < 200, answer::toString);
      server.lives();
    }
  }

  @Test
  void mayCarryAnErrorOfTheServersOwn() throws Exception {
    try (Conversation server = Conversation.begun()) {
      JsonObject answer = server.ask("probe/fail", "{'text': 'deliberate'}");
      assertEquals(REQUEST_FAILED, Conversation.code(answer));
      assertTrue(answer.toString().contains("told the client"), answer::toString);
      server.lives();
    }
  }

  @Test
  void isNotOneThatWaitsForTheClient() throws Exception {
    try (Conversation server = Conversation.begun()) {
      assertEquals("[\"amber\"]", server.ask("probe/ask", "null").get("result").getAsString());
      server.lives();
    }
  }

  @Test
  void isNotOneWithAnAnswerLargerThanTheOutbox() throws Exception {
    int size = Outbox.CAPACITY + 1;
    try (Conversation server = Conversation.begun()) {
      JsonObject answer = server.ask("probe/large", "{'size': " + size + "}");
      assertEquals(size, answer.get("result").getAsString().length());
      server.lives();
    }
  }

  /** A real shortage, not a thrown one: neither the message nor the answer fits the heap. */
  @Test
  void mayLackMemory() throws Exception {
    Process process =
        EndOfServerTest.java("dev.kettlemark.protocol.wire.FakeServerMain", "-Xmx24m");
    try (Conversation server = Conversation.with(process)) {
      server.initialize();
      server.raw("Content-Length: " + (40 << 20) + "\r\n\r\n");
      for (int megabyte = 0; megabyte < 40; megabyte++) {
        server.raw(" ".repeat(1 << 20));
      }
      assertEquals(INTERNAL_ERROR, server.codeOf("null"));
      assertEquals(INTERNAL_ERROR, server.code("probe/large", "{'size': 20000000}"));
      server.lives();
    } finally {
      process.destroyForcibly();
    }
  }
}
