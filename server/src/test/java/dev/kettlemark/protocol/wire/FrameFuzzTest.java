package dev.kettlemark.protocol.wire;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import dev.kettlemark.Chance;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import org.eclipse.lsp4j.services.LanguageClient;
import org.junit.jupiter.api.Test;

/**
 * Random frames for three seconds together.
 *
 * <p>The same number gives the same bytes on every machine.
 */
class FrameFuzzTest {

  private static final Duration BUDGET = Duration.ofMillis(1500);
  private static final int FEWEST_ROUNDS = 10;

  private static final List<String> PIECES = List.of(
      "{'jsonrpc':'2.0','id':1,'method':'initialize','params':{'processId':null,'capabilities':{}}}",
      "{'jsonrpc':'2.0','method':'initialized','params':{}}",
      "{'jsonrpc':'2.0','id':2,'method':'probe/echo','params':{'text':'\\ud83c'}}",
      "{'jsonrpc':'2.0','id':3,'method':'probe/never'}",
      "{'jsonrpc':'2.0','id':4,'method':'probe/fail','params':{'text':'stack'}}",
      "{'jsonrpc':'2.0','method':'$/cancelRequest','params':{'id':3}}",
      "{'jsonrpc':'2.0','method':'textDocument/didOpen','params':{'textDocument':{'uri':'a:b','text':'x'}}}",
      "{'jsonrpc':'2.0','id':5,'method':'textDocument/hover','params':{'textDocument':{'uri':'a:b'}}}",
      "{'jsonrpc':'2.0','id':6,'result':{}}",
      "[[[[",
      "42",
      "");

  /** Whatever chunks a stream arrives in, the frames written are the frames read. */
  @Test
  void readsBackWhatWasFramedInChunksOfAnySize() {
    rounds(random -> {
      List<String> written = new ArrayList<>();
      ByteArrayOutputStream stream = new ByteArrayOutputStream();
      for (int i = random.nextInt(5); i >= 0; i--) {
        String body = randomText(random);
        written.add(body);
        stream.writeBytes(frame(body.getBytes(UTF_8), random));
      }
      FrameReader reader = new FrameReader(inChunks(stream.toByteArray(), random));
      assertEquals(written, FrameReaderTest.texts(reader));
    });
  }

  /** Damaged conversations end as the end of input asks, and all that is written meanwhile is whole frames. */
  @Test
  void survivesDamagedConversations() {
    Conversation.silenceTheLog();
    rounds(random -> {
      ByteArrayOutputStream stream = new ByteArrayOutputStream();
      for (int i = random.nextInt(12); i >= 0; i--) {
        String piece = PIECES.get(random.nextInt(PIECES.size())).replace('\'', '"');
        stream.writeBytes(damaged(frame(piece.getBytes(UTF_8), random), random));
      }
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      FakeLanguageServer server = new FakeLanguageServer();
      int code = ServerProcess.run(
          server,
          LanguageClient.class,
          server::connect,
          inChunks(stream.toByteArray(), random),
          out,
          OptionalLong.empty());
      assertEquals(1, code);
      String written = out.toString(UTF_8);
      assertEquals(
          (written + " ").split("Content-Length: \\d+\r\n\r\n\\{", -1).length - 1,
          FrameReaderTest.texts(new FrameReader(new ByteArrayInputStream(out.toByteArray())))
              .size());
    });
  }

  private static void rounds(Chance.Round round) {
    Chance.rounds(
        BUDGET,
        FEWEST_ROUNDS,
        random -> assertTimeoutPreemptively(Duration.ofSeconds(5), () -> round.with(random)));
  }

  private static byte[] frame(byte[] body, Random random) {
    String name = random.nextBoolean() ? "Content-Length: " : "content-length:";
    String end = random.nextBoolean() ? "\r\n\r\n" : "\n\n";
    String type = random.nextInt(3) == 0 ? "Content-Type: a/b; charset=utf-8\r\n" : "";
    ByteArrayOutputStream frame = new ByteArrayOutputStream();
    frame.writeBytes((type + name + body.length + end).getBytes(ISO_8859_1));
    frame.writeBytes(body);
    return frame.toByteArray();
  }

  private static byte[] damaged(byte[] frame, Random random) {
    for (int i = random.nextInt(4); i > 0; i--) {
      frame[random.nextInt(frame.length)] = (byte) random.nextInt(256);
    }
    return random.nextInt(5) == 0 ? Arrays.copyOf(frame, random.nextInt(frame.length)) : frame;
  }

  /** Any code points but surrogates, which UTF-8 cannot carry alone. */
  private static String randomText(Random random) {
    return random
        .ints(random.nextInt(300), 0, 0x11000)
        .filter(c -> c < Character.MIN_SURROGATE || c > Character.MAX_SURROGATE)
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  private static InputStream inChunks(byte[] bytes, Random random) {
    return new ByteArrayInputStream(bytes) {
      @Override
      public synchronized int read(byte[] target, int from, int length) {
        return super.read(target, from, Math.min(length, 1 + random.nextInt(40)));
      }
    };
  }
}
