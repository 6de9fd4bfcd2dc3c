package dev.kettlemark.library;

import dev.kettlemark.text.Lazy;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The built-in pantry, written in the language itself and shipped with the program. */
public final class Pantry {

  /** What the URI of a pantry file starts with. */
  public static final String SCHEME = "kettlemark-pantry:";

  private static final String FOLDER = "/dev/kettlemark/pantry/";

  private static final Pattern HEADING = Pattern.compile("ingredient ([a-z0-9-]+) ");

  private static final Lazy<List<Document>> DOCUMENTS = Lazy.of(Pantry::read);

  private Pantry() {}

  /** The pantry, read once: all libraries of a process share what its sections say. */
  public static List<Document> documents() {
    return DOCUMENTS.get();
  }

  private static List<Document> read() {
    return resource("index.txt")
        .lines()
        .filter(line -> !line.isBlank())
        .map(name -> Document.builtIn(SCHEME + "/" + name, resource(name)))
        .toList();
  }

  /** The name of the ingredient that a section of the pantry declares, by its heading alone. */
  static Optional<String> ingredient(String section) {
    return Optional.of(HEADING.matcher(section))
        .filter(Matcher::lookingAt)
        .map(heading -> heading.group(1));
  }

  /** Whether a document is one of the pantry's. */
  public static boolean holds(String uri) {
    return uri.startsWith(SCHEME + "/");
  }

  private static String resource(String name) {
    try (InputStream stream = Pantry.class.getResourceAsStream(FOLDER + name)) {
      if (stream == null) {
        throw new IllegalStateException("the program lacks its pantry file " + name);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
