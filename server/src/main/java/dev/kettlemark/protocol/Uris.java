package dev.kettlemark.protocol;

import java.net.URI;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;

/** URIs as clients spell them, and the one spelling by which the library knows a file. */
final class Uris {

  /** Some clients leave the percent sign of a file's own name as it is. */
  private static final Pattern BARE_PERCENT = Pattern.compile("%(?![0-9A-Fa-f]{2})");

  private Uris() {}

  /** The file of a URI; empty for untitled buffers and other schemes. */
  static Optional<Path> path(String uri) {
    try {
      URI parsed = URI.create(BARE_PERCENT.matcher(uri).replaceAll("%25"));
      return "file".equalsIgnoreCase(parsed.getScheme())
          ? Optional.of(Path.of(parsed).normalize())
          : Optional.empty();
    } catch (IllegalArgumentException | FileSystemNotFoundException unusable) {
      return Optional.empty();
    }
  }

  /** The library's spelling: the same for every way to spell one file. */
  static String key(String uri) {
    return path(uri).map(Uris::key).orElse(uri);
  }

  static String key(Path path) {
    return path.toUri().toString();
  }
}
