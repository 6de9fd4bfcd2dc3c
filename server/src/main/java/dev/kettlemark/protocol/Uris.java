package dev.kettlemark.protocol;

import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** URIs as clients spell them, and the one spelling by which the library knows a file. */
final class Uris {

  /** Some clients leave percent signs, spaces and accents of a file's own name as they are. */
  private static final Pattern UNESCAPED =
      Pattern.compile("%(?![0-9A-Fa-f]{2})|[ \"<>^`{|}]|[^\\x00-\\x7F]+");

  private Uris() {}

  /** The file of a URI; empty for untitled buffers and other schemes. */
  static Optional<Path> path(String uri) {
    try {
      URI parsed = URI.create(UNESCAPED.matcher(uri).replaceAll(Uris::escaped));
      return "file".equalsIgnoreCase(parsed.getScheme())
          ? Optional.of(Path.of(parsed).normalize())
          : Optional.empty();
    } catch (IllegalArgumentException | FileSystemNotFoundException unusable) {
      return Optional.empty();
    }
  }

  private static String escaped(MatchResult found) {
    StringBuilder escaped = new StringBuilder();
    for (byte octet : found.group().getBytes(StandardCharsets.UTF_8)) {
      escaped.append("%%%02X".formatted(octet));
    }
    return escaped.toString();
  }

  /** The library's spelling: the same for every way to spell one file. */
  static String key(String uri) {
    return path(uri).map(Uris::key).orElse(uri);
  }

  static String key(Path path) {
    return PantryPages.key(path).orElseGet(() -> path.toUri().toString());
  }
}
