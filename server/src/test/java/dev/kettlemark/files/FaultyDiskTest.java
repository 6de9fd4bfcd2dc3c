package dev.kettlemark.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Disks that are full, files that go while they are read, links that lead in circles. */
class FaultyDiskTest {

  private static final int KILOBYTE = 1024;

  private FileSystem disk;
  private Path folder;

  /** Sixty-four kilobytes in blocks of one. */
  @BeforeEach
  void makeDisk() throws IOException {
    disk = Jimfs.newFileSystem(Configuration.unix().toBuilder()
        .setAttributeViews("basic", "posix")
        .setBlockSize(KILOBYTE)
        .setMaxSize(64 * KILOBYTE)
        .build());
    folder = Files.createDirectories(disk.getPath("/kitchen"));
  }

  @AfterEach
  void endDisk() throws IOException {
    disk.close();
  }

  @Test
  void aTextStaysAsItWasWhereTheDiskIsFull() throws IOException {
    Path file = folder.resolve("nougat.kettle");
    String old = "formula nougat\n".repeat(2_000);
    Files.writeString(file, old);
    IOException full = assertThrows(IOException.class, () -> TextFile.write(file, old + old));
    assertTrue(TextFile.why(full).contains("space"), TextFile.why(full));
    assertEquals(old, Files.readString(file));
    assertEquals(List.of("nougat.kettle"), names());
  }

  /** As long as the disk holds the old text and the new, any number of saves go through. */
  @Test
  void aDiskThatIsNearlyFullIsNotUsedUp() throws IOException {
    Path file = folder.resolve("nougat.kettle");
    Files.writeString(file, "");
    for (int save = 0; save < 200; save++) {
      TextFile.write(file, "x".repeat(20 * KILOBYTE + save));
    }
    assertEquals(20 * KILOBYTE + 199, Files.size(file));
    assertEquals(List.of("nougat.kettle"), names());
  }

  @Test
  void aPublishedPageStaysAsItWasWhereTheDiskIsFull() throws IOException {
    Path library = Files.createDirectories(disk.getPath("/library"));
    SiteFolder site = SiteFolder.open(folder, library);
    String old = "<p>".repeat(10 * KILOBYTE);
    assertTrue(site.put("sheets/nougat.html", old, false));
    assertThrows(IOException.class, () -> site.put("sheets/nougat.html", old + old, false));
    assertEquals(old, site.read("sheets/nougat.html").orElseThrow());
    assertEquals(List.of("sheets"), names());
  }

  /** A text with half a character cannot be saved; what stands on the disk is not harmed by the attempt. */
  @Test
  void halfACharacterIsNotReplacedByAQuestionMark() throws IOException {
    Path file = Files.writeString(folder.resolve("nougat.kettle"), "formula nougat\n");
    assertThrows(
        CharacterCodingException.class, () -> TextFile.write(file, "formula nougat \"\uD83C\"\n"));
    assertEquals("formula nougat\n", Files.readString(file));
    assertEquals(List.of("nougat.kettle"), names());
  }

  /** On the real disk, since the promise is its own: a reader never meets a part of a text. */
  @Test
  void aReaderFindsTheOldTextOrTheNew(@TempDir Path real) throws Exception {
    Path file = Files.writeString(real.resolve("nougat.kettle"), text(0));
    AtomicBoolean ended = new AtomicBoolean();
    CompletableFuture<Integer> reading = CompletableFuture.supplyAsync(() -> {
      int reads = 0;
      while (!ended.get() || reads == 0) {
        String read = read(file);
        assertEquals(text(Integer.parseInt(read.substring(0, read.indexOf(' ')))), read);
        reads++;
      }
      return reads;
    });
    for (int save = 1; save <= 50; save++) {
      TextFile.write(file, text(save));
    }
    ended.set(true);
    assertTrue(reading.get() > 0);
  }

  private static String text(int number) {
    return (number + " ").repeat(20_000);
  }

  private static String read(Path file) {
    try {
      return TextFile.read(file);
    } catch (IOException failure) {
      throw new IllegalStateException(failure);
    }
  }

  @Test
  void filesMayGoWhileTheFolderIsRead(@TempDir Path real) throws Exception {
    for (int i = 0; i < 300; i++) {
      Path each = Files.createDirectories(real.resolve("shelf-" + i % 30));
      Files.writeString(each.resolve("f" + i + ".kettle"), "formula f" + i + "\n");
    }
    CompletableFuture<Void> going = CompletableFuture.runAsync(() -> {
      for (int i = 0; i < 300; i += 2) {
        delete(real.resolve("shelf-" + i % 30).resolve("f" + i + ".kettle"));
      }
      for (int i = 0; i < 30; i += 2) {
        delete(real.resolve("shelf-" + i));
      }
    });
    List<Path> told = new ArrayList<>();
    do {
      List<Path> found = KettleFolder.below(real, (path, failure) -> told.add(path));
      assertTrue(found.size() >= 150, found.size() + " of those that stay are missing");
    } while (!going.isDone());
    going.get();
    assertEquals(
        150, KettleFolder.below(real, (path, failure) -> told.add(path)).size());
    IOException gone = assertThrows(
        IOException.class, () -> TextFile.read(real.resolve("shelf-0").resolve("f0.kettle")));
    assertEquals("there is no such file or folder", TextFile.why(gone));
  }

  private static void delete(Path path) {
    try {
      Files.deleteIfExists(path);
    } catch (IOException failure) {
      throw new IllegalStateException(failure);
    }
  }

  @Test
  void linksThatLeadInCirclesAreFollowedOnce(@TempDir Path real) throws IOException {
    Path shelf = Files.createDirectories(real.resolve("shelf"));
    Files.writeString(shelf.resolve("nougat.kettle"), "formula nougat\n");
    Files.createSymbolicLink(shelf.resolve("up"), real);
    Files.createSymbolicLink(real.resolve("again"), shelf);
    Files.createSymbolicLink(shelf.resolve("itself.kettle"), shelf.resolve("itself.kettle"));
    Files.createSymbolicLink(shelf.resolve("nowhere.kettle"), real.resolve("nothing"));
    List<Path> found = KettleFolder.below(real, (path, failure) -> {});
    long nougats = found.stream().filter(path -> path.endsWith("nougat.kettle")).count();
    assertEquals(1, nougats, found.toString());
    for (Path path : found) {
      if (!path.endsWith("nougat.kettle")) {
        IOException failure = assertThrows(IOException.class, () -> TextFile.read(path));
        assertFalse(TextFile.why(failure).isEmpty());
      }
    }
  }

  private List<String> names() throws IOException {
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }
}
