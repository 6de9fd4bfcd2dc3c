package dev.kettlemark.protocol;

import java.net.URI;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Path;
import java.util.Optional;

/** URIs as clients spell them, and the one spelling by which the library knows a file. */
final class Uris {

  private Uris() {}

  /** The file of a URI; empty for untitled buffers and other schemes. */
  static Optional<Path> path(String uri) {
    try {
      URI parsed = URI.create(uri);
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
    return PantryPages.key(path).orElseGet(() -> path.toUri().toString());
  }
}
