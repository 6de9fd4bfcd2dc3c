package dev.kettlemark.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** No change on the disk is lost; conditions by RFC 9110, section 13.1. */
@Timeout(value = 60, unit = TimeUnit.SECONDS)
class SavingTest {

  @TempDir
  private Path folder;

  private Path file;
  private Visit visit;

  @BeforeEach
  void open() throws IOException {
    file = folder.resolve("süße reste.kettle");
    Files.writeString(file, "# one\r\n");
    visit = Visit.of(folder);
  }

  @AfterEach
  void close() {
    visit.close();
  }

  private static final String TARGET = "/api/file?path=s%C3%BC%C3%9Fe%20reste.kettle";

  @Test
  void savesOverWhatWasSeen() throws IOException {
    Wire.Reply read = visit.get(TARGET);
    assertEquals("# one\r\n", json(read).get("text").getAsString());
    Wire.Reply saved = visit.ask("PUT", TARGET, "# zwei °C\r\n", "If-Match", read.header("etag"));
    assertEquals(200, saved.status());
    assertEquals("# zwei °C\r\n", Files.readString(file));
    assertEquals(visit.get(TARGET).header("etag"), saved.header("etag"));
  }

  @Test
  void tellsBothTextsWhereSomebodyElseHasWritten() throws IOException {
    String tag = visit.get(TARGET).header("etag");
    Files.writeString(file, "# theirs\n");
    Wire.Reply reply = visit.ask("PUT", TARGET, "# mine\n", "If-Match", tag);
    assertEquals(409, reply.status());
    assertEquals("# theirs\n", json(reply).get("text").getAsString());
    assertEquals("# mine\n", json(reply).get("sent").getAsString());
    assertEquals("# theirs\n", Files.readString(file));
    String now = "\"" + json(reply).get("tag").getAsString() + "\"";
    assertEquals(200, visit.ask("PUT", TARGET, "# mine\n", "If-Match", now).status());
    assertEquals("# mine\n", Files.readString(file));
  }

  @Test
  void aSaveThatChangesNothingIsNoConflict() throws IOException {
    String tag = visit.get(TARGET).header("etag");
    Files.writeString(file, "# same\n");
    assertEquals(200, visit.ask("PUT", TARGET, "# same\n", "If-Match", tag).status());
  }

  @Test
  void aNewFileTakesNobodysPlace() throws IOException {
    Wire.Reply taken = visit.ask("PUT", TARGET, "# mine\n", "If-None-Match", "*");
    assertEquals(409, taken.status());
    assertEquals("# one\r\n", Files.readString(file));
    String fresh = "/api/file?path=trials/2026/march.kettle";
    assertEquals(201, visit.ask("PUT", fresh, "# new\n", "If-None-Match", "*").status());
    assertEquals("# new\n", Files.readString(folder.resolve("trials/2026/march.kettle")));
  }

  @Test
  void ofManyWhoSaveAtOnceOneWins() throws Exception {
    String tag = visit.get(TARGET).header("etag");
    ExecutorService pool = Executors.newFixedThreadPool(8);
    try {
      List<Callable<Integer>> saves = IntStream.range(0, 24)
          .<Callable<Integer>>mapToObj(i -> () ->
              visit.ask("PUT", TARGET, "# by " + i + "\n", "If-Match", tag).status())
          .toList();
      int saved = 0;
      for (Future<Integer> save : pool.invokeAll(saves)) {
        int status = save.get();
        assertTrue(status == 200 || status == 409, "status " + status);
        saved += status == 200 ? 1 : 0;
      }
      assertEquals(1, saved);
    } finally {
      pool.shutdownNow();
    }
  }

  /** A reader never finds half a text: the two texts have one letter each, so a mixture shows. */
  @Test
  void aReaderFindsTheOldTextOrTheNew() throws Exception {
    String a = "a".repeat(1 << 20);
    String b = "b".repeat(1 << 20);
    Files.writeString(file, a);
    AtomicBoolean done = new AtomicBoolean();
    ExecutorService pool = Executors.newSingleThreadExecutor();
    try {
      Future<Integer> reads = pool.submit(() -> {
        int count = 0;
        while (!done.get()) {
          String text = Files.readString(file);
          assertTrue(text.equals(a) || text.equals(b), "a mixture");
          count++;
        }
        return count;
      });
      for (int i = 0; i < 20; i++) {
        String tag = visit.get(TARGET).header("etag");
        assertEquals(
            200, visit.ask("PUT", TARGET, i % 2 == 0 ? b : a, "If-Match", tag).status());
      }
      done.set(true);
      assertTrue(reads.get() > 0);
    } finally {
      pool.shutdownNow();
    }
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(List.of(file), files.toList(), "nothing is left lying about");
    }
  }

  @Test
  void keepsPermissionsAndLinks() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("link.kettle"), file);
    Set<PosixFilePermission> mode =
        Set.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);
    Files.setPosixFilePermissions(file, mode);
    String tag = visit.get("/api/file?path=link.kettle").header("etag");
    assertEquals(
        200,
        visit.ask("PUT", "/api/file?path=link.kettle", "# x\n", "If-Match", tag).status());
    assertTrue(Files.isSymbolicLink(link));
    assertEquals("# x\n", Files.readString(file));
    assertEquals(mode, Files.getPosixFilePermissions(file));
  }

  @Test
  void whatIsNoTextIsSaidToBeNone() throws IOException {
    Files.write(file, new byte[] {(byte) 0xFF, (byte) 0xFE, 0});
    assertEquals(415, visit.get(TARGET).status());
    try (Wire wire = visit.wire()) {
      wire.send("PUT " + TARGET + " HTTP/1.1\r\nHost: " + visit.host() + "\r\nCookie: "
          + visit.cookie + "\r\nOrigin: " + visit.origin()
          + "\r\nIf-Match: \"00\"\r\nContent-Type: text/plain;charset=utf-8"
          + "\r\nContent-Length: 2\r\n\r\n");
      assertEquals(400, wire.send(new byte[] {(byte) 0xC3, 0x28}).reply().status());
    }
  }

  @Test
  void theListTellsChangesByTheirTags() throws IOException {
    String before = visit.get("/api/files").body();
    assertEquals(before, visit.get("/api/files").body());
    Files.writeString(file, "# two\r\n", StandardCharsets.UTF_8);
    assertFalse(before.equals(visit.get("/api/files").body()));
  }

  private static JsonObject json(Wire.Reply reply) {
    return JsonParser.parseString(reply.body()).getAsJsonObject();
  }
}
