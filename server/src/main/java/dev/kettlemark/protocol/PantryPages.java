package dev.kettlemark.protocol;

import dev.kettlemark.files.CacheFolder;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Pantry;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The texts of the built-in pantry as something that an editor can open.
 *
 * <p>A client that shows pages of other schemes asks for their text. For all others a text is laid into
 * the user's cache folder when it is first pointed at, as a file that cannot be edited; when the client
 * opens that file, it is known as the page of the pantry and not as a text of the user.
 */
final class PantryPages {

  /** The scheme of a page, without its colon. */
  static final String SCHEME = Pantry.SCHEME.substring(0, Pantry.SCHEME.length() - 1);

  private static final String FOLDER = "pantry";

  private PantryPages() {}

  /**
   * How a client finds a page.
   *
   * @param held whether the client asks the server for texts
   */
  static String uri(Document page, boolean held) {
    if (held) {
      return page.uri();
    }
    Path file = folder().resolve(name(page.uri()));
    return CacheFolder.readOnly(file, page.text().source().text())
        .map(path -> path.toUri().toString())
        .orElse(page.uri());
  }

  /** The page that a file in the cache folder holds. */
  static Optional<String> key(Path file) {
    Path parent = file.getParent();
    // Most files lie elsewhere, and then nobody need ask where the cache is.
    return parent != null && parent.endsWith(FOLDER) && folder().equals(parent)
        ? Optional.of(Pantry.SCHEME + "/" + file.getFileName())
        : Optional.empty();
  }

  private static Path folder() {
    return CacheFolder.usual().resolve(FOLDER);
  }

  private static String name(String uri) {
    return uri.substring(uri.lastIndexOf('/') + 1);
  }
}
