package dev.kettlemark.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The tags of files follow what they hold, whatever the clocks of file system and machine say. */
class KettleStoreTest {

  private static final Instant NOW = Instant.parse("2026-11-25T10:00:00Z");

  @TempDir
  private Path folder;

  private final AtomicLong nanos = new AtomicLong(Long.MAX_VALUE - 1_000_000_000);
  private Path file;
  private KettleStore store;

  @BeforeEach
  void open() throws IOException {
    file = folder.resolve("a.kettle");
    store = new KettleStore(folder, nanos::get);
  }

  private void write(String text, Instant shown) throws IOException {
    Files.writeString(file, text);
    Files.setLastModifiedTime(file, FileTime.from(shown));
  }

  private String tag() {
    return store.list().get(0).tag();
  }

  private void pass(Duration time) {
    nanos.addAndGet(time.toNanos());
  }

  /** Hours and years on either side of what the clock of the machine says. */
  @ParameterizedTest
  @ValueSource(longs = {-500_000, -26, -1, 0, 1, 26, 500_000})
  void tellsAWriteWithinTheSameStepOfAnyClock(long hours) throws IOException {
    Instant shown = Instant.now().plus(Duration.ofHours(hours));
    write("# one", shown);
    String first = tag();
    pass(Duration.ofMillis(900));
    write("# two", shown);
    assertNotEquals(first, tag());
  }

  @ParameterizedTest
  @ValueSource(longs = {-500_000, -26, -1, 1, 26, 500_000})
  void tellsAWriteAfterTheClockWasSet(long hours) throws IOException {
    write("# one", NOW);
    String first = tag();
    pass(Duration.ofSeconds(4));
    assertEquals(first, tag());
    write("# two", NOW.plus(Duration.ofHours(hours)));
    assertNotEquals(first, tag());
  }

  /** A copy that brings its old time along, as archives and copies with times do. */
  @Test
  void tellsAWriteThatKeepsTheTimeOfTheFile() throws Exception {
    assumeTrue(file.getFileSystem().supportedFileAttributeViews().contains("unix"));
    write("# one", NOW);
    String first = tag();
    pass(Duration.ofSeconds(4));
    assertEquals(first, tag());
    pass(Duration.ofSeconds(4));
    Thread.sleep(20);
    write("# two", NOW);
    assertNotEquals(first, tag());
  }

  @Test
  void keepsTheTagOfAFileThatStaysAsItIs() throws IOException {
    write("# one", Instant.now().plus(Duration.ofDays(400)));
    String first = tag();
    for (int look = 0; look < 5; look++) {
      pass(Duration.ofSeconds(2));
      assertEquals(first, tag());
    }
  }
}
