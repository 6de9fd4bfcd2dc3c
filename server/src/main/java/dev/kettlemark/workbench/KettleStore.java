package dev.kettlemark.workbench;

import dev.kettlemark.files.KettleFolder;
import dev.kettlemark.files.TextFile;
import dev.kettlemark.workbench.http.Refused;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.LongSupplier;

/**
 * The formula files of one folder.
 *
 * <p>A file is named by its path below the folder, with forward slashes. Whatever leads out of the folder, by its name
 * or by a link, is not there.
 */
final class KettleStore {

  /** In bytes; ten thousand lines are a fifth of it. */
  static final int LARGEST = 2 << 20;

  private static final int LONGEST_NAME = 1000;

  /**
   * A file that is written twice within this may show the same time twice; the coarsest file systems count
   * in steps of two seconds.
   */
  private static final Duration SETTLING = Duration.ofSeconds(3);

  private final Path folder;
  private final LongSupplier nanos;
  private final Map<Path, Seen> seen = new ConcurrentHashMap<>();

  /**
   * What a file held when it was last read, so that watching a folder need not read it all again.
   *
   * <p>The time of the file is held against nothing but itself, since the clock that set it may be another
   * one, or may have been set since; how long it has stayed the same is measured by a clock that nobody sets.
   *
   * @param marks what changes with each write
   * @param since when these marks were first seen, in nanoseconds
   * @param settled whether they had stayed the same for long enough when the file was read
   */
  private record Seen(Marks marks, long since, boolean settled, String tag) {}

  /** What the file system says of a file; the time of its entry cannot be set by a program. */
  private record Marks(long size, FileTime modified, Object entry, Object key) {}

  /** A file and the tag of what it holds. */
  record Listed(String path, String tag) {}

  /** A text and its tag. */
  record Held(String text, String tag) {}

  /**
   * What came of a wish to write.
   *
   * @param held what the file holds now
   * @param written whether that is what was to be written
   */
  record Written(Held held, boolean written) {}

  KettleStore(Path folder) throws IOException {
    this(folder, System::nanoTime);
  }

  KettleStore(Path folder, LongSupplier nanos) throws IOException {
    this.folder = folder.toRealPath();
    this.nanos = nanos;
  }

  Path folder() {
    return folder;
  }

  /** All files that can be read and are not too large, in order of name. */
  List<Listed> list() {
    return KettleFolder.below(folder, (unreadable, why) -> {}).stream()
        .flatMap(path -> listed(path).stream())
        .toList();
  }

  private Optional<Listed> listed(Path path) {
    try {
      Path file = inside(path.toRealPath());
      return Files.size(file) <= LARGEST
          ? Optional.of(new Listed(name(path), tag(file)))
          : Optional.empty();
    } catch (IOException | Refused leftOut) {
      return Optional.empty();
    }
  }

  Held read(String name) throws Refused, IOException {
    return held(existing(name));
  }

  /**
   * Replaces a file's text, if it still holds what the writer has seen.
   *
   * <p>A reader finds the old text or the new, never a part of either.
   */
  synchronized Written save(String name, String seenTag, String text) throws Refused, IOException {
    Path file = existing(name);
    Held now = held(file);
    if (now.text().equals(text)) {
      return new Written(now, true);
    }
    return TextFile.replace(file, text, bytes -> tagOf(bytes).equals(seenTag))
        ? new Written(new Held(text, tagOf(text.getBytes(StandardCharsets.UTF_8))), true)
        : new Written(held(file), false);
  }

  /** Writes a file that must not be there yet, and the folders above it. */
  synchronized Written create(String name, String text) throws Refused, IOException {
    Path path = named(name);
    Path parent = Objects.requireNonNullElse(path.getParent(), folder);
    // Links are followed as far as there is something; what is made below cannot be one.
    Path above = parent;
    while (!above.equals(folder) && !Files.exists(above, LinkOption.NOFOLLOW_LINKS)) {
      above = Objects.requireNonNullElse(above.getParent(), folder);
    }
    Path within = inside(above.toRealPath()).resolve(above.relativize(parent).toString());
    Files.createDirectories(within);
    Path file = within.resolve(path.getFileName());
    try {
      Files.writeString(Files.createFile(file), text, StandardCharsets.UTF_8);
    } catch (FileAlreadyExistsException taken) {
      return new Written(read(name), false);
    }
    return new Written(new Held(text, tagOf(text.getBytes(StandardCharsets.UTF_8))), true);
  }

  private Path existing(String name) throws Refused, IOException {
    try {
      Path file = inside(named(name).toRealPath());
      if (!Files.isRegularFile(file)) {
        throw absent();
      }
      return file;
    } catch (NoSuchFileException none) {
      throw absent();
    }
  }

  /** The path that a name stands for, before any link is followed. */
  private Path named(String name) throws Refused {
    boolean plain = name.length() <= LONGEST_NAME
        && name.endsWith(KettleFolder.SUFFIX)
        && name.chars().noneMatch(c -> c < ' ' || c == 0x7F || "\\:*?\"<>|".indexOf(c) >= 0);
    List<String> parts = Arrays.asList(name.split("/", -1));
    if (!plain || parts.stream().anyMatch(part -> part.startsWith(".") || part.isBlank())) {
      throw new Refused(
          400, "a formula file has a plain name that ends with " + KettleFolder.SUFFIX);
    }
    try {
      return folder.resolve(name);
    } catch (InvalidPathException impossible) {
      throw new Refused(400, "no file can have that name");
    }
  }

  private Path inside(Path real) throws Refused {
    if (!real.startsWith(folder)) {
      throw absent();
    }
    return real;
  }

  private static Refused absent() {
    return new Refused(404, "the folder has no such formula file");
  }

  private String name(Path path) {
    return folder.relativize(path).toString().replace(path.getFileSystem().getSeparator(), "/");
  }

  private static Held held(Path file) throws Refused, IOException {
    if (Files.size(file) > LARGEST) {
      throw new Refused(413, "the file is larger than " + LARGEST + " bytes");
    }
    byte[] bytes = Files.readAllBytes(file);
    return new Held(TextFile.decoded(bytes), tagOf(bytes));
  }

  private String tag(Path file) throws IOException {
    Marks marks = marks(file);
    long now = nanos.getAsLong();
    Optional<Seen> last =
        Optional.ofNullable(seen.get(file)).filter(held -> held.marks().equals(marks));
    if (last.isPresent() && last.get().settled()) {
      return last.get().tag();
    }
    long since = last.map(Seen::since).orElse(now);
    String tag = tagOf(Files.readAllBytes(file));
    seen.put(file, new Seen(marks, since, now - since > SETTLING.toNanos(), tag));
    return tag;
  }

  private static Marks marks(Path file) throws IOException {
    BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
    boolean isUnix = file.getFileSystem().supportedFileAttributeViews().contains("unix");
    Object entry = isUnix ? Files.getAttribute(file, "unix:ctime") : "";
    return new Marks(
        now.size(),
        now.lastModifiedTime(),
        entry,
        Optional.ofNullable(now.fileKey()).orElse(""));
  }

  private static String tagOf(byte[] bytes) {
    try {
      byte[] hash = MessageDigest.getInstance("SHA-256").digest(bytes);
      return HexFormat.of().formatHex(hash, 0, 16).toLowerCase(Locale.ROOT);
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }
}
