package dev.kettlemark.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;

/** The folder in which the program may leave files that it can make again at any time. */
public final class CacheFolder {

  /** The property of the Java machine that names another folder. */
  public static final String PROPERTY = "kettlemark.cache";

  private CacheFolder() {}

  /** The folder of this user, by the custom of the system; it need not exist. */
  public static Path usual() {
    return of(System.getProperties(), System.getenv());
  }

  static Path of(Properties properties, Map<String, String> environment) {
    String named = properties.getProperty(PROPERTY, "");
    if (!named.isEmpty()) {
      return Path.of(named).toAbsolutePath().normalize();
    }
    String system = properties.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    String home = properties.getProperty("user.home", "");
    if (system.startsWith("windows")) {
      String local = environment.getOrDefault("LOCALAPPDATA", "");
      return local.isEmpty()
          ? Path.of(home, "AppData", "Local", "kettlemark", "cache")
          : Path.of(local, "kettlemark", "cache");
    }
    if (system.startsWith("mac")) {
      return Path.of(home, "Library", "Caches", "kettlemark");
    }
    String cache = environment.getOrDefault("XDG_CACHE_HOME", "");
    return cache.startsWith("/")
        ? Path.of(cache, "kettlemark")
        : Path.of(home, ".cache", "kettlemark");
  }

  /**
   * A file that holds a text and that nobody should edit.
   *
   * <p>A file that holds it already is left as it is. Another one is replaced in one step, so that no
   * reader meets half a text.
   *
   * @return empty where the file cannot be written
   */
  public static Optional<Path> readOnly(Path file, String text) {
    try {
      if (!Files.isRegularFile(file) || !Files.readString(file).equals(text)) {
        write(file, text);
      }
      return Optional.of(file);
    } catch (IOException unwritable) {
      return Optional.empty();
    }
  }

  private static void write(Path file, String text) throws IOException {
    try (Draft draft = Draft.beside(file)) {
      draft.write(text.getBytes(StandardCharsets.UTF_8));
      if (!draft.path().toFile().setReadOnly()) {
        throw new IOException("cannot protect " + draft.path());
      }
      draft.takeItsPlace();
    }
  }
}
