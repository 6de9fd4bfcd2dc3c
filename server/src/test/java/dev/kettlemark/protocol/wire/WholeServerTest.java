package dev.kettlemark.protocol.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The usual ways in which language servers hang or die, tried on the whole server, with a formula open.
 *
 * <p>What is asked for is what JSON-RPC 2.0 and the Language Server Protocol 3.17 ask for; the six seconds for large
 * texts are our own promise.
 */
class WholeServerTest {

  private static final Duration LIMIT = Duration.ofSeconds(20);
  private static final Duration LARGE = Duration.ofSeconds(6);

  private static final String URI = "untitled:brittle";

  /** Twice the same amount, which is told. */
  private static final String FORMULA = """
      formula brittle
        percent of charge
        batch 500 g
        caution hot-sugar
      stage pan
        60 % white-sugar
        60 % water
        cook to 150 °C
      """;

  private interface Talk {
    void with(Conversation server) throws Exception;
  }

  /** Afterwards, the server must still know what stands in the formula. */
  private static DynamicTest survives(String name, Talk talk) {
    return ends(name, server -> {
      begin(server);
      talk.with(server);
      assertKnowsTheFormula(server);
    });
  }

  private static DynamicTest ends(String name, Talk talk) {
    return dynamicTest(
        name,
        () -> assertTimeoutPreemptively(LIMIT, () -> {
          try (Conversation server = Conversation.deafWhole()) {
            server.listen();
            talk.with(server);
          }
        }));
  }

  private static void begin(Conversation server) {
    server.initialize();
    server.open(URI, FORMULA);
    assertFalse(published(server, URI).isEmpty());
  }

  private static void assertKnowsTheFormula(Conversation server) {
    String hover = String.valueOf(server.hover(URI, 5, 12).get("result"));
    assertTrue(hover.contains("white-sugar"), hover);
  }

  /** What the server says next of a document. */
  private static JsonArray published(Conversation server, String uri) {
    while (true) {
      JsonObject told = server.nextNotification();
      if (told.get("method").getAsString().equals("textDocument/publishDiagnostics")
          && told.getAsJsonObject("params").get("uri").getAsString().equals(uri)) {
        return told.getAsJsonObject("params").getAsJsonArray("diagnostics");
      }
    }
  }

  @TestFactory
  Stream<DynamicTest> lifeCycle() {
    String parameters = "{'processId': null, 'rootUri': null, 'capabilities': {}}";
    return Stream.of(
        survives("an ordinary conversation", s -> {}),
        ends("a request before initialize", s -> {
          assertEquals(-32002, Conversation.code(s.hover(URI, 0, 0)));
          begin(s);
          assertKnowsTheFormula(s);
        }),
        survives("initialize twice", s -> assertEquals(-32600, s.code("initialize", parameters))),
        ends("a request after shutdown", s -> {
          begin(s);
          assertEquals(0, s.code("shutdown", "null"));
          assertEquals(-32600, Conversation.code(s.hover(URI, 0, 0)));
          s.tell("exit", "null");
          assertEquals(0, s.exitCode());
        }),
        ends("exit without shutdown", s -> {
          begin(s);
          s.tell("exit", "null");
          assertEquals(1, s.exitCode());
        }),
        ends("the end of the input", s -> {
          begin(s);
          assertEquals(1, s.hangUp());
        }),
        ends("the death of the editor", s -> {
          Process editor = EndOfServerTest.java("dev.kettlemark.protocol.wire.FakeServerMain");
          try {
            assertEquals(
                0, s.code("initialize", "{'processId': " + editor.pid() + ", 'capabilities': {}}"));
            editor.destroyForcibly();
            assertEquals(1, s.exitCode());
          } finally {
            editor.destroyForcibly();
          }
        }));
  }

  @TestFactory
  Stream<DynamicTest> messages() {
    String ask = "{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":\"textDocument/hover\",\"params\":"
        + "{\"textDocument\":{\"uri\":\"a:b\"},\"position\":{\"line\":0,\"character\":0}}}";
    return Stream.of(
        survives(
            "an unknown request", s -> assertEquals(-32601, s.code("textDocument/taste", "{}"))),
        survives(
            "an unknown request with a dollar", s -> assertEquals(-32601, s.code("$/taste", "{}"))),
        survives("unknown notifications", s -> {
          s.tell("$/taste", "{}");
          s.tell("kitchen/bell", "[]");
        }),
        survives("malformed JSON", s -> {
          s.sayExactly("{\"jsonrpc\":\"2.0\",\"method\":");
          assertEquals(-32700, s.codeOf("null"));
        }),
        survives("JSON that is no message", s -> {
          for (String odd : List.of("42", "[]", "'nougat'", "{}")) {
            s.say(odd);
            assertEquals(-32600, s.codeOf("null"));
          }
        }),
        survives(
            "parameters of the wrong type",
            s -> assertEquals(
                -32602, s.code("textDocument/hover", "{'textDocument': 7, 'position': 'here'}"))),
        survives("no parameters", s -> {
          s.say("{'jsonrpc': '2.0', 'id': 1, 'method': 'textDocument/hover'}");
          assertEquals(-32602, s.codeOf("1"));
        }),
        survives("a header in lower case, with a type", s -> {
          s.raw(
              "content-length: %d\r\ncontent-type: application/vscode-jsonrpc; charset=utf-8\r\n\r\n%s"
                  .formatted(ask.length(), ask));
          assertEquals(0, s.codeOf("1"));
        }),
        survives("a header without a length", s -> s.raw("Content-Type: a/b\r\n\r\n")),
        survives("64 KiB that are no header", s -> s.raw("\u0001x".repeat(1 << 15))),
        survives("JSON that is 20,000 deep", s -> {
          s.sayExactly("{\"jsonrpc\":\"2.0\",\"method\":\"initialized\",\"params\":"
              + "[".repeat(20_000) + "]".repeat(20_000) + "}");
          assertEquals(-32700, s.codeOf("null"));
        }),
        survives("cancelling the unknown, and an id twice", s -> {
          s.tell("$/cancelRequest", "{'id': 4711}");
          s.sayExactly(ask);
          s.sayExactly(ask);
          assertEquals(0, s.codeOf("1"));
          assertEquals(0, s.codeOf("1"));
        }),
        dynamicTest(
            "answers that nobody reads",
            () -> assertTimeoutPreemptively(LIMIT, () -> {
              try (Conversation server = Conversation.deafWhole()) {
                server.say(
                    "{'jsonrpc': '2.0', 'id': 0, 'method': 'initialize', 'params': {'capabilities': {}}}");
                server.open(URI, FORMULA);
                for (int id = 1; id <= 500; id++) {
                  server.say("{'jsonrpc': '2.0', 'id': " + id
                      + ", 'method': 'textDocument/completion', 'params': {'textDocument': {'uri': '"
                      + URI + "'}, 'position': {'line': 6, 'character': 7}}}");
                }
                server.listen();
                Set<Integer> answered = new HashSet<>();
                for (int id = 0; id <= 500; id++) {
                  assertTrue(answered.add(server.idOfResult()));
                }
                assertKnowsTheFormula(server);
              }
            })));
  }

  @TestFactory
  Stream<DynamicTest> edits() {
    return Stream.of(
        survives("an edit behind the end of the text", s -> {
          s.open("untitled:other", "formula a\n");
          s.edit("untitled:other", 2, "900 0 901 7", "x");
          s.edit("untitled:other", 3, "0 900 0 901", "x");
        }),
        survives("an edit at negative and reversed places", s -> {
          s.open("untitled:other", "formula a\nstage b\n");
          s.edit("untitled:other", 2, "-1 -5 0 0", "x");
          s.edit("untitled:other", 3, "1 4 0 2", "x");
        }),
        survives(
            "an edit of a document that is not open",
            s -> s.edit("untitled:nowhere", 2, "0 0 0 0", "x")),
        survives("versions that run backwards", s -> {
          s.open("untitled:other", "formula a\n");
          s.edit("untitled:other", 9, "0 0 0 0", "x");
          s.edit("untitled:other", -4, "0 0 0 0", "x");
        }),
        survives("a document that is opened twice and closed twice", s -> {
          for (int i = 0; i < 2; i++) {
            s.open("untitled:other", "formula a\n");
          }
          for (int i = 0; i < 2; i++) {
            s.tell("textDocument/didClose", "{'textDocument': {'uri': 'untitled:other'}}");
          }
        }),
        survives("an edit between the halves of a surrogate pair", s -> {
          s.open("untitled:other", "formula a \"\ud83c\udf6c\"\n");
          s.edit("untitled:other", 2, "0 12 0 12", "x");
        }),
        survives("half a surrogate pair", s -> {
          s.open("untitled:other", "formula a\n");
          s.edit("untitled:other", 2, "0 9 0 9", " \\ud83c");
          s.open("untitled:third", "formula \ud83c\n");
        }));
  }

  @TestFactory
  Stream<DynamicTest> texts() {
    return Stream.of(
        survives(
            "a hover behind the end",
            s -> assertTrue(
                List.of(0, -32602).contains(Conversation.code(s.hover(URI, 9000, 9000))))),
        survives("hovers over documents of other kinds", s -> {
          for (String uri : List.of("https://example.org/a", "a:b", "", "%%%", "file:///", "x")) {
            assertTrue(List.of(0, -32602).contains(Conversation.code(s.hover(uri, 0, 0))), uri);
          }
        }),
        read(
            "NUL, byte order mark and mixed line ends",
            "\ufeff" + "formula a\u0000\r  batch 1 g\r\n\n"),
        read("one line of a million characters", "formula a " + "sugar ".repeat(166_666)),
        read("ten thousand brackets", FORMULA + "  " + "(".repeat(10_000) + ")".repeat(10_000)),
        read("five megabytes", FORMULA + "  1.60 %  caster-sugar\n".repeat(250_000)));
  }

  /** It is told of, and asked about, within the time for large texts. */
  private static DynamicTest read(String name, String text) {
    return survives(
        name,
        s -> assertTimeoutPreemptively(LARGE, () -> {
          s.open("untitled:other", text);
          published(s, "untitled:other");
          assertEquals(0, Conversation.code(s.hover("untitled:other", 0, 2)));
        }));
  }

  @TestFactory
  Stream<DynamicTest> spellings() {
    return Stream.of(
        spelled(
            "an address with escapes", "file:///nowhere%20at%20all/s%C3%BC%C3%9Fe%2Bnuts.kettle"),
        spelled("a drive of Windows", "file:///c%3A/Kitchen/nougat.kettle"),
        ends("an offer to count in UTF-8", s -> {
          JsonObject answer = s.ask(
              "initialize",
              "{'processId': null, 'capabilities': {'general': {'positionEncodings': ['utf-8', 'utf-16']}}}");
          assertEquals(
              "utf-8",
              answer
                  .getAsJsonObject("result")
                  .getAsJsonObject("capabilities")
                  .get("positionEncoding")
                  .getAsString());
        }));
  }

  private static DynamicTest spelled(String name, String uri) {
    return survives(name, s -> {
      s.open(uri, FORMULA);
      assertFalse(published(s, uri).isEmpty());
    });
  }
}
