package dev.kettlemark;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A committed file that a test compares with what the program says today. */
public final class Pinned {

  private static final boolean REGENERATE = Boolean.getBoolean("kettlemark.regenerate");

  private final Path file;

  private Pinned(Path file) {
    this.file = file;
  }

  /** A file below the test resources of this module. */
  public static Pinned resource(String name) {
    return new Pinned(folder(name));
  }

  /** A file of this module, by its path from the module's folder. */
  public static Pinned file(Path file) {
    return new Pinned(file);
  }

  /** A folder or file below the test resources of this module. */
  public static Path folder(String name) {
    return Path.of("src/test/resources/dev/kettlemark").resolve(name);
  }

  public String text() {
    try {
      return Files.exists(file) ? Files.readString(file) : "";
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /**
   * Asserts that the file says the same; with {@code -Dkettlemark.regenerate=true} writes it instead.
   *
   * @param test the class whose run writes the file anew
   */
  public void check(String actual, Class<?> test) {
    if (REGENERATE) {
      try {
        Files.createDirectories(file.toAbsolutePath().getParent());
        Files.writeString(file, actual);
      } catch (IOException broken) {
        throw new UncheckedIOException(broken);
      }
    }
    assertEquals(
        text(),
        actual,
        () -> file + " is out of date; look at the difference and, if it is right, run\n  "
            + "mvn test -pl grammar,server -am -Dtest=" + test.getSimpleName()
            + " -Dsurefire.failIfNoSpecifiedTests=false -Dkettlemark.regenerate=true\n");
  }
}
