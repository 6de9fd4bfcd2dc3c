package dev.kettlemark.protocol;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;

class RehearsalTest {

  private static final Duration PATIENCE = Duration.ofSeconds(60);

  /** A request that were refused, or findings that did not come, would end it. */
  @Test
  void playsToItsEnd() {
    assertTimeoutPreemptively(
        PATIENCE, () -> assertDoesNotThrow(() -> Rehearsal.of("1").play(3)));
  }

  /** What the client sends reaches the server as it is, and what the server sends the client. */
  @Test
  void changesNothingOfWhatItHears() throws IOException {
    Rehearsal rehearsal = Rehearsal.of("1");
    byte[] said = "Content-Length: 2\r\n\r\n{}".getBytes(StandardCharsets.US_ASCII);
    assertArrayEquals(said, rehearsal.heard(new ByteArrayInputStream(said)).readAllBytes());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    rehearsal.heard(out).write(said);
    assertArrayEquals(said, out.toByteArray());
  }

  /** While the client keeps speaking, nothing is played beside it. */
  @Test
  void holdsItsBreathWhileTheClientSpeaks() throws Exception {
    Rehearsal rehearsal = Rehearsal.of("1");
    InputStream spoken = rehearsal.heard(InputStream.nullInputStream());
    AtomicBoolean done = new AtomicBoolean();
    Thread playing = new Thread(() -> {
      try {
        rehearsal.play(1);
        done.set(true);
      } catch (IOException | InterruptedException broken) {
        throw new IllegalStateException(broken);
      }
    });
    spoken.read(new byte[1], 0, 1);
    playing.start();
    for (int i = 0; i < 60; i++) {
      spoken.read(new byte[1], 0, 1);
      Thread.sleep(20);
    }
    assertFalse(done.get());
    playing.join(PATIENCE.toMillis());
    assertTrue(done.get());
  }
}
