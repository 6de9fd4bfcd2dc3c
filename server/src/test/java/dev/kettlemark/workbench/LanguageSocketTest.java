package dev.kettlemark.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import dev.kettlemark.workbench.http.WebSocket;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The WebSocket: its handshake and frames by RFC 6455, and the language server behind it. */
@Timeout(value = 60, unit = TimeUnit.SECONDS)
class LanguageSocketTest {

  private static final String INITIALIZE = """
      {"jsonrpc":"2.0","id":1,"method":"initialize","params":{"processId":null,"rootUri":null,\
      "capabilities":{}}}""";

  @TempDir
  private Path folder;

  private Visit visit;

  @BeforeEach
  void open() throws IOException {
    Files.writeString(folder.resolve("syrup.kettle"), "# syrup\n");
    visit = Visit.of(folder);
  }

  @AfterEach
  void close() {
    visit.close();
  }

  private Wire socket() throws IOException {
    Wire wire = visit.wire();
    Wire.Reply reply = wire.handshake(
        "/language", "Host", visit.host(), "Cookie", visit.cookie, "Origin", visit.origin());
    assertEquals(101, reply.status());
    return wire;
  }

  /** RFC 6455, section 1.3: the sample key and what it must be answered with. */
  @Test
  void answersTheKeyOfTheStandard() throws IOException {
    try (Wire wire = visit.wire()) {
      Wire.Reply reply = wire.handshake(
          "/language",
          "Host",
          visit.host(),
          "Cookie",
          visit.cookie,
          "Origin",
          visit.origin(),
          "Sec-WebSocket-Key",
          "dGhlIHNhbXBsZSBub25jZQ==");
      assertEquals("s3pPLMBiTxaQ9kYGzzhZRbK+xOo=", reply.header("sec-websocket-accept"));
    }
  }

  @Test
  void isTheLanguageServer() throws IOException {
    try (Wire wire = socket()) {
      JsonObject answer =
          JsonParser.parseString(wire.send(Wire.text(INITIALIZE)).next()).getAsJsonObject();
      assertEquals(1, answer.get("id").getAsInt());
      JsonObject result = answer.getAsJsonObject("result");
      assertEquals(
          "kettlemark", result.getAsJsonObject("serverInfo").get("name").getAsString());
    }
  }

  /** RFC 6455, section 5.4: a text in pieces, with a ping between them. */
  @Test
  void readsATextInPieces() throws IOException {
    byte[] all = INITIALIZE.getBytes(StandardCharsets.UTF_8);
    try (Wire wire = socket()) {
      wire.send(Wire.frame(0x01, Arrays.copyOfRange(all, 0, 10)));
      wire.send(Wire.frame(0x89, "p".getBytes(StandardCharsets.UTF_8)));
      wire.send(Wire.frame(0x00, Arrays.copyOfRange(all, 10, 20)));
      wire.send(Wire.frame(0x80, Arrays.copyOfRange(all, 20, all.length)));
      assertEquals("pong p", wire.next());
      assertTrue(wire.next().contains("\"capabilities\""));
    }
  }

  /** An independent client: the JDK's own. */
  @Test
  void speaksWithTheClientOfTheJdk() throws Exception {
    CompletableFuture<String> told = new CompletableFuture<>();
    java.net.http.WebSocket client = HttpClient.newHttpClient()
        .newWebSocketBuilder()
        .header("Cookie", visit.cookie)
        .header("Origin", visit.origin())
        .buildAsync(
            URI.create("ws://" + visit.host() + "/language"),
            new java.net.http.WebSocket.Listener() {
              private final StringBuilder text = new StringBuilder();

              @Override
              public CompletionStage<?> onText(
                  java.net.http.WebSocket socket, CharSequence data, boolean last) {
                text.append(data);
                if (last) {
                  told.complete(text.toString());
                }
                socket.request(1);
                return CompletableFuture.completedFuture(null);
              }
            })
        .get();
    client.sendText(INITIALIZE, true).get();
    assertTrue(told.get().contains("\"serverInfo\""));
    client.sendClose(1000, "").get();
  }

  @Test
  void whoBreaksTheProtocolIsToldHow() throws IOException {
    // RFC 6455, section 7.4.1: 1002 protocol error, 1003 data it cannot accept, 1007 not UTF-8,
    // 1009 too big.
    check("[1002]", new byte[] {(byte) 0x81, 2, 'h', 'i'});
    check("[1002]", Wire.frame(0xC1, new byte[] {'x'}));
    check("[1002]", Wire.frame(0x80, new byte[] {'x'}));
    check("[1002]", Wire.frame(0x83, new byte[] {'x'}));
    check("[1002]", Wire.frame(0x09, new byte[] {'x'}));
    check("[1002]", Wire.frame(0x89, new byte[126]));
    check("[1003]", Wire.frame(0x82, new byte[] {1}));
    check("[1007]", Wire.frame(0x81, new byte[] {(byte) 0xC3, 0x28}));
    check("[1009]", header(WebSocket.LONGEST_MESSAGE + 1L));
    check("[1009]", header(Long.MAX_VALUE));
    check("[1009]", header(-1L));
    check("[1000]", Wire.frame(0x88, new byte[] {3, (byte) 0xE8}));
  }

  @Test
  void sessionsAreBoundedAndEndWithTheirPages() throws Exception {
    Set<Thread> others = Thread.getAllStackTraces().keySet();
    List<Wire> pages = new ArrayList<>();
    try {
      for (int i = 0; i < 12; i++) {
        pages.add(socket());
      }
      try (Wire more = visit.wire()) {
        assertEquals(
            503,
            more.handshake(
                    "/language",
                    "Host",
                    visit.host(),
                    "Cookie",
                    visit.cookie,
                    "Origin",
                    visit.origin())
                .status());
      }
      pages.get(0).send(Wire.text(INITIALIZE)).next();
    } finally {
      for (Wire page : pages) {
        page.close();
      }
    }
    for (int i = 0; i < 200 && visit.workbench.connections() > 0; i++) {
      Thread.sleep(50);
    }
    socket().close();
    waitForNoSessionThreads(others);
  }

  /** A page that just goes leaves no thread of its session behind. */
  private static void waitForNoSessionThreads(Set<Thread> others) throws InterruptedException {
    List<String> names = List.of();
    for (int i = 0; i < 200; i++) {
      names = Thread.getAllStackTraces().keySet().stream()
          .filter(thread -> !others.contains(thread))
          .map(Thread::getName)
          .filter(name -> List.of("kettlemark-reader", "kettlemark-writer", "kettlemark-worker")
              .contains(name))
          .toList();
      if (names.isEmpty()) {
        return;
      }
      Thread.sleep(50);
    }
    assertEquals(List.of(), names);
  }

  private void check(String expected, byte[] frame) throws IOException {
    try (Wire wire = socket()) {
      assertEquals(expected, wire.send(frame).next());
    }
  }

  private static byte[] header(long length) {
    return ByteBuffer.allocate(14)
        .put((byte) 0x81)
        .put((byte) 0xFF)
        .putLong(length)
        .putInt(0)
        .array();
  }
}
