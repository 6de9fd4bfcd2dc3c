package dev.kettlemark.protocol.wire;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.google.gson.JsonObject;
import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a hostile, broken or merely unusual client sends, and that the server takes it as the specifications say.
 *
 * <p>Sources: JSON-RPC 2.0 Specification (jsonrpc.org, 2013), sections 4 to 5.1, for the codes;
 * Language Server Protocol 3.17 (Microsoft, 2022), "Base Protocol" for frames, "Server lifecycle" for the states and
 * for -32002, "Cancellation Support" for -32800; RFC 8259 (IETF, 2017) for JSON. Where they leave a case open, the
 * server must live on and answer the next request.
 */
class HostileProtocolTest {

  private static final Duration LIMIT = Duration.ofSeconds(9);

  private static final int PARSE_ERROR = -32700;
  private static final int INVALID_REQUEST = -32600;
  private static final int METHOD_NOT_FOUND = -32601;
  private static final int INVALID_PARAMS = -32602;
  private static final int NOT_INITIALIZED = -32002;
  private static final int CANCELLED = -32800;

  private interface Talk {
    void with(Conversation server) throws Exception;
  }

  private interface Opening {
    Conversation open() throws Exception;
  }

  /** A case on a server that is initialized and has a document open; at the end it must still answer. */
  private static DynamicTest survives(String name, Talk talk) {
    return hostile(name, Conversation::begun, server -> {
      talk.with(server);
      server.lives();
    });
  }

  private static DynamicTest hostile(String name, Opening opening, Talk talk) {
    return dynamicTest(
        name,
        () -> assertTimeoutPreemptively(LIMIT, () -> {
          try (Conversation server = opening.open()) {
            talk.with(server);
          }
        }));
  }

  @TestFactory
  Stream<DynamicTest> frames() {
    String ask = "{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":\"probe/echo\"}";
    int length = ask.length();
    return Stream.of(
        survives(
            "an ordinary conversation",
            s -> assertEquals("second line\n", hoverText(s.hover(Conversation.URI, 1, 0)))),
        survives("lower-case field names, a content type", s -> {
          s.raw(
              "content-length: %d\r\ncontent-type: application/vscode-jsonrpc; charset=utf8\r\n\r\n%s"
                  .formatted(length, ask));
          assertEquals(0, s.codeOf("1"));
        }),
        survives("content type first, quoted, in capitals", s -> {
          s.raw("CONTENT-TYPE: a/b; CHARSET=\"UTF-8\"\r\nCONTENT-LENGTH:%d\r\n\r\n%s"
              .formatted(length, ask));
          assertEquals(0, s.codeOf("1"));
        }),
        survives("lines that end in LF alone", s -> {
          s.raw("Content-Length: %d\n\n%s".formatted(length, ask));
          assertEquals(0, s.codeOf("1"));
        }),
        survives("another charset is refused", s -> {
          s.raw("Content-Type: a/b; charset=utf-16\r\nContent-Length: %d\r\n\r\n%s"
              .formatted(length, ask));
          assertEquals(INVALID_REQUEST, s.codeOf("null"));
        }),
        survives("a header without a length", s -> s.raw("Content-Type: a/b\r\n\r\n" + ask)),
        survives("lengths that are no lengths", s -> {
          for (String odd : List.of("-5", "twelve", "0x10", "1.5", "", "1 2", "9".repeat(30))) {
            s.raw("Content-Length: " + odd + "\r\n\r\n");
          }
        }),
        survives("of several lengths the last holds", s -> {
          s.raw("Content-Length: 7\r\nContent-Length: %d\r\n\r\n%s".formatted(length, ask));
          assertEquals(0, s.codeOf("1"));
        }),
        survives("64 KiB of rubbish without a line end", s -> s.raw("\u0001x".repeat(1 << 15))),
        survives("64 KiB of line ends", s -> s.raw("\r\n".repeat(1 << 15))),
        survives("a message of no bytes", s -> {
          s.raw("Content-Length: 0\r\n\r\n");
          assertEquals(PARSE_ERROR, s.codeOf("null"));
        }),
        survives("a message over the size limit is skipped", s -> {
          s.raw("Content-Length: " + (FrameReader.LONGEST_MESSAGE + 1) + "\r\n\r\n");
          s.raw(" ".repeat(FrameReader.LONGEST_MESSAGE + 1));
          assertEquals(INVALID_REQUEST, s.codeOf("null"));
        }),
        survives("an absurd length is not waited for", s -> {
          s.raw("Content-Length: 99999999999999999\r\n\r\n");
          assertEquals(INVALID_REQUEST, s.codeOf("null"));
        }),
        survives("a message that comes byte by byte", s -> {
          for (byte octet : ("Content-Length: " + length + "\r\n\r\n" + ask).getBytes(US_ASCII)) {
            s.raw(new byte[] {octet});
          }
          assertEquals(0, s.codeOf("1"));
        }),
        survives("a hundred messages at once", s -> {
          s.raw(("Content-Length: " + length + "\r\n\r\n" + ask).repeat(100));
          IntStream.range(0, 100).forEach(i -> assertEquals(0, s.codeOf("1")));
        }),
        hostile(
            "more than a megabyte that is no message ends the server", Conversation::begun, s -> {
              s.raw("y".repeat(FrameReader.LONGEST_JUNK + 1));
              assertEquals(1, s.exitCode());
            }));
  }

  @TestFactory
  Stream<DynamicTest> json() {
    return Stream.of(
        notJson("a missing value", "{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":}"),
        notJson("half a message", "{\"jsonrpc\":\"2.0\",\"id\":1,\"meth"),
        notJson("text behind the message", "{\"jsonrpc\":\"2.0\",\"method\":\"initialized\"} x"),
        notJson("names without quotes", "{jsonrpc:'2.0',method:'initialized'}"),
        notJson("a comment", "/* hello */ {\"jsonrpc\":\"2.0\",\"method\":\"initialized\"}"),
        notJson(
            "a bare control character in a string",
            "{\"jsonrpc\":\"2.0\",\"method\":\"a\u0001b\"}"),
        notJson("blanks", "   \n"),
        notJson("20,000 open brackets", "[".repeat(20_000)),
        notJson("20,000 nested objects", "{\"a\":".repeat(20_000) + "1" + "}".repeat(20_000)),
        notMessage("a number", "42"),
        notMessage("a string", "'initialize'"),
        notMessage("null", "null"),
        notMessage("an empty object", "{}"),
        notMessage("a batch", "[{'jsonrpc': '2.0', 'id': 1, 'method': 'probe/echo'}]"),
        notMessage("another version", "{'jsonrpc': '1.0', 'id': 1, 'method': 'probe/echo'}"),
        notMessage("no version", "{'id': 1, 'method': 'probe/echo'}"),
        notMessage("neither method nor result", "{'jsonrpc': '2.0', 'id': 1}"),
        notMessage("an id that is null", "{'jsonrpc': '2.0', 'id': null, 'method': 'probe/echo'}"),
        notMessage(
            "an id that is an object", "{'jsonrpc': '2.0', 'id': {}, 'method': 'probe/echo'}"),
        survives("a method that is no string", s -> {
          s.say("{'jsonrpc': '2.0', 'id': 1, 'method': 5}");
          assertEquals(INVALID_REQUEST, s.codeOf("1"));
        }),
        survives("brackets inside a string are not depth", s -> {
          String brackets = "[{".repeat(20_000) + "\\\\\\\"[";
          JsonObject answer = s.ask("probe/echo", "{'text': '" + brackets + "'}");
          assertEquals(40_003, answer.get("result").getAsString().length());
        }),
        survives("bytes that are no UTF-8", s -> {
          byte[] body =
              "{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":\"probe/echo\",\"params\":{\"text\":\"??\"}}"
                  .getBytes(US_ASCII);
          body[body.length - 5] = (byte) 0xC3;
          body[body.length - 4] = (byte) 0xFF;
          s.raw("Content-Length: " + body.length + "\r\n\r\n");
          s.raw(body);
          assertEquals(0, s.codeOf("1"));
        }),
        survives("half a surrogate pair comes back as it went", s -> {
          JsonObject answer = s.ask("probe/echo", "{'text': 'a\\ud83c b \\udf6c \\ud83c\\udf6c'}");
          assertEquals("a\ud83c b \udf6c \ud83c\udf6c", answer.get("result").getAsString());
        }),
        survives(
            "a number beyond every range",
            s -> assertEquals(INVALID_PARAMS, s.code("probe/large", "{'size': 1e999999999}"))),
        survives(
            "the same name twice",
            s -> s.say(
                "{'jsonrpc': '2.0', 'jsonrpc': '2.0', 'method': 'initialized', 'params': {}, 'params': {}}")));
  }

  private static DynamicTest notJson(String name, String text) {
    return survives("not JSON: " + name, s -> {
      s.sayExactly(text);
      assertEquals(PARSE_ERROR, s.codeOf("null"));
    });
  }

  private static DynamicTest notMessage(String name, String json) {
    return survives("no message: " + name, s -> {
      s.say(json);
      assertEquals(INVALID_REQUEST, s.codeOf("null"));
    });
  }

  @TestFactory
  Stream<DynamicTest> lifecycle() {
    String parameters = "{'processId': null, 'rootUri': null, 'capabilities': {}}";
    return Stream.of(
        hostile("a request before initialize", Conversation::fresh, s -> {
          assertEquals(NOT_INITIALIZED, code(s.hover(Conversation.URI, 0, 0)));
          assertEquals(NOT_INITIALIZED, s.code("shutdown", "null"));
          assertEquals(NOT_INITIALIZED, s.code("no/such/method", "5"));
          s.initialize();
          s.lives();
        }),
        hostile("a notification before initialize is dropped", Conversation::fresh, s -> {
          s.open(Conversation.URI, "early");
          s.initialize();
          assertTrue(s.hover(Conversation.URI, 0, 0).get("result").isJsonNull());
        }),
        survives(
            "initialize a second time",
            s -> assertEquals(INVALID_REQUEST, s.code("initialize", parameters))),
        hostile("initialize with a wrong parameter may be repeated", Conversation::fresh, s -> {
          assertEquals(
              INVALID_PARAMS, s.code("initialize", "{'processId': 'one', 'capabilities': []}"));
          s.initialize();
          s.lives();
        }),
        hostile("initialize as a notification is no start", Conversation::fresh, s -> {
          s.tell("initialize", parameters);
          assertEquals(NOT_INITIALIZED, s.code("probe/echo", "{}"));
        }),
        hostile("a request after shutdown", Conversation::begun, s -> {
          assertEquals(0, s.code("shutdown", "null"));
          assertEquals(INVALID_REQUEST, code(s.hover(Conversation.URI, 0, 0)));
          assertEquals(INVALID_REQUEST, s.code("shutdown", "null"));
          assertEquals(INVALID_REQUEST, s.code("initialize", parameters));
          s.tell("exit", "null");
          assertEquals(0, s.exitCode());
        }),
        hostile("exit without shutdown", Conversation::begun, s -> {
          s.tell("exit", "null");
          assertEquals(1, s.exitCode());
        }),
        hostile("exit before initialize", Conversation::fresh, s -> {
          s.say("{'jsonrpc': '2.0', 'method': 'exit'}");
          assertEquals(1, s.exitCode());
        }),
        hostile("shutdown without an id is no shutdown", Conversation::begun, s -> {
          s.tell("shutdown", "null");
          s.lives();
          s.tell("exit", "null");
          assertEquals(1, s.exitCode());
        }),
        survives(
            "exit with an id is no exit",
            s -> assertEquals(INVALID_REQUEST, s.code("exit", "null"))));
  }

  @TestFactory
  Stream<DynamicTest> methods() {
    return Stream.of(
        survives(
            "an unknown request",
            s -> assertEquals(METHOD_NOT_FOUND, s.code("kitchen/sink", "{}"))),
        survives(
            "an unknown request of the protocol's own",
            s -> assertEquals(METHOD_NOT_FOUND, s.code("$/kitchen", "{}"))),
        survives(
            "a request with an empty name", s -> assertEquals(METHOD_NOT_FOUND, s.code("", "{}"))),
        survives("unknown notifications", s -> {
          s.tell("kitchen/sink", "{}");
          s.tell("$/kitchen", "[1, 2]");
        }),
        survives(
            "a method of LSP that the server lacks",
            s -> assertEquals(
                METHOD_NOT_FOUND,
                s.code("textDocument/documentLink", "{'textDocument': {'uri': 'a:b'}}"))),
        survives(
            "a notification of LSP that the server lacks",
            s -> s.tell("$/setTrace", "{'value': 'off'}")),
        survives("a request sent as a notification", s -> s.tell("probe/echo", "{'text': 'x'}")),
        survives(
            "a notification sent as a request",
            s -> assertEquals(
                INVALID_REQUEST,
                s.code("textDocument/didSave", "{'textDocument': {'uri': 'a:b'}}"))));
  }

  /** LSP 3.17: hover requires {@code textDocument.uri} and {@code position.line} and {@code .character}. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{}",
        "null",
        "5",
        "'text'",
        "[]",
        "[1, 2]",
        "{'textDocument': {'uri': 'a:b'}}",
        "{'textDocument': {}, 'position': {'line': 0, 'character': 0}}",
        "{'textDocument': {'uri': null}, 'position': {'line': 0, 'character': 0}}",
        "{'textDocument': 7, 'position': {'line': 0, 'character': 0}}",
        "{'textDocument': {'uri': []}, 'position': {'line': 0, 'character': 0}}",
        "{'textDocument': {'uri': 'a:b'}, 'position': {'line': 'one', 'character': 0}}",
        "{'textDocument': {'uri': 'a:b'}, 'position': {'line': 1e12, 'character': 0}}",
        "{'textDocument': {'uri': 'a:b'}, 'position': {'line': 0.5, 'character': 0}}",
        "{'textDocument': {'uri': 'a:b'}, 'position': {'line': '0', 'character': 0}}",
        "{'textDocument': {'uri': 'a:b'}, 'position': [0, 0]}",
      })
  void refusesParametersThatDoNotFit(String params) {
    assertTimeoutPreemptively(LIMIT, () -> {
      try (Conversation server = Conversation.begun()) {
        assertEquals(INVALID_PARAMS, server.code("textDocument/hover", params));
        server.lives();
      }
    });
  }

  @TestFactory
  Stream<DynamicTest> parameters() {
    return Stream.of(
        survives("left out where a field is required", s -> {
          s.say("{'jsonrpc': '2.0', 'id': 1, 'method': 'textDocument/hover'}");
          assertEquals(INVALID_PARAMS, s.codeOf("1"));
        }),
        survives("left out where none is required", s -> {
          s.say("{'jsonrpc': '2.0', 'method': 'initialized'}");
          s.say("{'jsonrpc': '2.0', 'id': 1, 'method': 'probe/echo'}");
          assertEquals(0, s.codeOf("1"));
        }),
        survives(
            "by position",
            s -> assertEquals(
                "x", s.ask("probe/echo", "[{'text': 'x'}]").get("result").getAsString())),
        survives(
            "with fields nobody knows",
            s -> assertEquals(0, s.code("probe/echo", "{'text': 'x', 'x': {'text': [1, {}]}}"))),
        survives("wrong ones in notifications", s -> {
          s.tell("textDocument/didOpen", "{'textDocument': 5}");
          s.tell("textDocument/didOpen", "{'textDocument': {'uri': 'a:b'}}");
          s.tell("textDocument/didChange", "[]");
          s.tell("$/cancelRequest", "{'id': {}}");
        }));
  }

  @TestFactory
  Stream<DynamicTest> ids() {
    String echo = "{'jsonrpc': '2.0', 'id': %s, 'method': 'probe/echo', 'params': {'text': 'x'}}";
    return Stream.of(
        survives("come back as they went", s -> {
          for (String id :
              List.of("'a'", "''", "'7'", "0", "-1", "9007199254740993", "1.5", "'\\u00e9'")) {
            s.say(echo.formatted(id));
            s.answer(id.replace('\'', '"'));
          }
        }),
        survives("twice the same at the same time", s -> {
          s.say("{'jsonrpc': '2.0', 'id': 5, 'method': 'probe/never'}");
          s.say(echo.formatted("5"));
          s.say(echo.formatted("5"));
          assertEquals(0, s.codeOf("5"));
          assertEquals(0, s.codeOf("5"));
        }),
        survives("cancelled, but unknown or long answered", s -> {
          s.tell("$/cancelRequest", "{'id': 123456}");
          s.tell("$/cancelRequest", "{'id': 'nobody'}");
          s.say(echo.formatted("5"));
          s.answer("5");
          s.tell("$/cancelRequest", "{'id': 5}");
        }),
        survives("cancelled in time", s -> {
          s.say("{'jsonrpc': '2.0', 'id': 5, 'method': 'probe/never'}");
          s.tell("$/cancelRequest", "{'id': 5}");
          assertEquals(CANCELLED, s.codeOf("5"));
        }),
        survives("answers to questions nobody asked", s -> {
          s.say("{'jsonrpc': '2.0', 'id': 999, 'result': 1}");
          s.say("{'jsonrpc': '2.0', 'id': 'x', 'error': {'code': 1, 'message': 'm'}}");
          s.say("{'jsonrpc': '2.0', 'id': null, 'error': {'code': -32700, 'message': 'm'}}");
          s.say("{'jsonrpc': '2.0', 'id': 999, 'result': 1, 'error': 5}");
        }));
  }

  private static int code(JsonObject answer) {
    return Conversation.code(answer);
  }

  private static String hoverText(JsonObject answer) {
    return answer
        .getAsJsonObject("result")
        .getAsJsonObject("contents")
        .get("value")
        .getAsString();
  }
}
