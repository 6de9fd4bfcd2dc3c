package dev.kettlemark.protocol.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.google.gson.JsonObject;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Document traffic that does not fit the documents.
 *
 * <p>The fake server guards nothing, so these cases show that the wire contains the damage. Source of the rules: Language
 * Server Protocol 3.17 (Microsoft, 2022), "Text Documents" and "Text Document Synchronization".
 */
class HostileDocumentTest {

  private interface Talk {
    void with(Conversation server) throws Exception;
  }

  private static DynamicTest survives(String name, Talk talk) {
    return dynamicTest(
        name,
        () -> assertTimeoutPreemptively(Duration.ofSeconds(9), () -> {
          try (Conversation server = Conversation.begun()) {
            talk.with(server);
            server.lives();
          }
        }));
  }

  @TestFactory
  Stream<DynamicTest> edits() {
    String uri = Conversation.URI;
    return Stream.of(
        survives("behind the end of the text", s -> {
          s.edit(uri, 2, "900 0 900 5", "x");
          s.edit(uri, 3, "0 900 0 901", "x");
        }),
        survives("at negative and reversed positions", s -> {
          s.edit(uri, 2, "-1 -1 0 0", "x");
          s.edit(uri, 3, "1 4 0 2", "x");
        }),
        survives(
            "of a document that is not open",
            s -> s.edit("file:///nowhere.kettle", 2, "0 0 0 0", "x")),
        survives("with versions that run backwards", s -> {
          s.edit(uri, 9, "0 0 0 0", "x");
          s.edit(uri, -4, "0 0 0 0", "x");
        }),
        survives("that open and close twice", s -> {
          s.open(uri, "again");
          for (int i = 0; i < 2; i++) {
            s.tell("textDocument/didClose", "{'textDocument': {'uri': '" + uri + "'}}");
          }
        }),
        survives("that split a surrogate pair", s -> {
          s.open(uri, "a\ud83c\udf6cb");
          s.edit(uri, 2, "0 2 0 2", "x");
          assertEquals("a\ud83cx\udf6cb", text(s.hover(uri, 0, 0)));
        }),
        survives("that bring half a surrogate pair", s -> {
          s.edit(uri, 2, "0 0 0 5", "\\ud83c");
          assertTrue(text(s.hover(uri, 0, 0)).startsWith("\ud83c line"));
        }));
  }

  @TestFactory
  Stream<DynamicTest> texts() {
    String uri = Conversation.URI;
    return Stream.of(
        kept("NUL, byte order mark and mixed line ends", "\ufeffa\u0000b\r\nc\rd\n\u2028e\u0085f"),
        kept("one line of a million characters", "x".repeat(1_000_000)),
        kept("ten thousand brackets", "(".repeat(10_000) + ")".repeat(10_000)),
        kept("five megabytes", "1.60 %  caster-sugar\n".repeat(250_000)),
        kept("nothing at all", ""),
        survives(
            "a hover behind the end",
            s -> assertTrue(
                List.of(0, -32602, -32603).contains(Conversation.code(s.hover(uri, 900, 900))))));
  }

  private static DynamicTest kept(String name, String text) {
    return survives(name, s -> {
      s.open("file:///kept.kettle", text);
      assertEquals(text, text(s.hover("file:///kept.kettle", 0, 0)));
    });
  }

  /** LSP 3.17, "URI": clients and servers should not re-spell each other's. */
  @TestFactory
  Stream<DynamicTest> spellings() {
    return Stream.of(
            "file:///a%20b/c.kettle",
            "file:///a b/%C3%A9.kettle",
            "file:///c%3A/Kitchen/x.kettle",
            "file:///C:/Kitchen/x.kettle",
            "untitled:Untitled-1",
            "vscode-notebook-cell://x/y#W0",
            "",
            "not a uri at all %%%")
        .map(uri -> survives("the client's own spelling: " + uri, s -> {
          s.nextNotification();
          s.open(uri, "text");
          JsonObject published = s.nextNotification().getAsJsonObject("params");
          assertEquals(uri, published.get("uri").getAsString());
          assertEquals("text", text(s.hover(uri, 0, 0)));
        }));
  }

  /** LSP 3.17: a client may offer encodings; the answer is the server's, and the offer must do no harm. */
  @TestFactory
  Stream<DynamicTest> encodings() {
    return Stream.of("['utf-8', 'utf-16']", "['utf-32']", "[]", "['klingon']")
        .map(offer -> dynamicTest("position encodings " + offer, () -> {
          try (Conversation server = Conversation.fresh()) {
            assertEquals(
                0,
                server.code(
                    "initialize",
                    "{'processId': null, 'capabilities': " + "{'general': {'positionEncodings': "
                        + offer + "}}}"));
            server.lives();
          }
        }));
  }

  private static String text(JsonObject hover) {
    return hover
        .getAsJsonObject("result")
        .getAsJsonObject("contents")
        .get("value")
        .getAsString();
  }
}
