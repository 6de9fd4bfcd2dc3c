package dev.kettlemark.protocol.wire;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Frames as in Language Server Protocol 3.17 (Microsoft, 2022), "Base Protocol". */
class FrameReaderTest {

  /** The example of the specification's header part, with a body of our own. */
  @Test
  void readsTheFrameOfTheSpecification() throws Exception {
    check("Content-Length: 5\r\n\r\nhello", "hello");
  }

  @Test
  void countsBytesNotCharacters() throws Exception {
    check("Content-Length: 4\r\n\r\né€".replace("4", "5"), "é€");
  }

  @Test
  void readsFramesThatFollowEachOther() throws Exception {
    check("Content-Length: 1\r\n\r\naContent-Length: 1\r\n\r\nb", "a", "b");
  }

  @Test
  void findsTheHeaderBehindABodyThatNobodyAnnounced() throws Exception {
    check("Content-Type: x\r\n\r\n{\"a\":1}Content-Length: 1\r\n\r\nb", "b");
  }

  /** Only the end of a long line is kept; the header must never fall to what is dropped. */
  @Test
  void findsTheHeaderBehindRubbishOfAnyLength() throws Exception {
    for (int length = 0; length < 1500; length++) {
      check("z".repeat(length) + "Content-Length: 1\r\n\r\nb", "b");
    }
  }

  @Test
  void acceptsBlanksAroundTheLength() throws Exception {
    check("CONTENT-length \t:\t 1 \r\nX-Other: y\r\n\r\na", "a");
  }

  @Test
  void replacesBytesThatAreNotUtf8() throws Exception {
    byte[] frame = "Content-Length: 3\r\n\r\na?b".getBytes(UTF_8);
    frame[frame.length - 2] = (byte) 0xFF;
    assertEquals(List.of("a\ufffdb"), texts(new FrameReader(new ByteArrayInputStream(frame))));
  }

  @Test
  void endsWithoutATextInsideAFrame() throws Exception {
    check("");
    check("Content-Length: 1");
    check("Content-Length: 5\r\n\r\nhell");
  }

  @Test
  void goesOnBehindAFrameThatItRefuses() throws Exception {
    check(
        "Content-Type: a; charset=latin1\r\nContent-Length: 1\r\n\r\naContent-Length: 1\r\n\r\nb",
        "refused",
        "b");
    check("Content-Length: 9999999999999\r\n\r\nContent-Length: 1\r\n\r\nb", "refused", "b");
  }

  @Test
  void givesUpWhenTheStreamIsSomethingElse() {
    InputStream zeroes = new InputStream() {
      @Override
      public int read() {
        return 0;
      }

      @Override
      public int read(byte[] bytes, int from, int length) {
        return length;
      }
    };
    assertThrows(IOException.class, () -> new FrameReader(zeroes).next());
  }

  private static void check(String bytes, String... expected) throws IOException {
    FrameReader reader = new FrameReader(new ByteArrayInputStream(bytes.getBytes(UTF_8)));
    assertEquals(List.of(expected), texts(reader));
  }

  /** All texts up to the end of input, "refused" standing for a frame that is refused. */
  static List<String> texts(FrameReader reader) throws IOException {
    List<String> texts = new ArrayList<>();
    while (true) {
      try {
        Optional<String> text = reader.next();
        if (text.isEmpty()) {
          return texts;
        }
        texts.add(text.get());
      } catch (Refusal refusal) {
        texts.add("refused");
      }
    }
  }
}
