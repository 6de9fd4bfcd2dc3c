package dev.kettlemark.protocol;

import dev.kettlemark.checks.RulePages;
import dev.kettlemark.files.CacheFolder;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Pages that a client can open by a URI: those of rules, and reports.
 *
 * <p>Nothing of it needs a network. A client that asks the server for texts gets URIs of a scheme of our
 * own. For any other the page of a rule lies in the user's cache folder, and a report in a folder of this
 * process alone, which goes when the server ends.
 */
final class Pages {

  /** The scheme of texts that the server holds. */
  static final String SCHEME = "kettlemark-page";

  private static final Logger LOG = Logger.getLogger(Pages.class.getName());

  private final boolean held;
  private final Map<String, Optional<String>> rules = new ConcurrentHashMap<>();
  private final Map<String, String> texts = new ConcurrentHashMap<>();
  private @Nullable Path folder;
  private boolean unwritable;

  /**
   * Pages for one client.
   *
   * @param held whether the client asks the server for texts
   */
  Pages(boolean held) {
    this.held = held;
  }

  /** Where the page of a rule can be read; empty for an unknown rule, or where no file can be written. */
  Optional<String> ofRule(String id) {
    return rules.computeIfAbsent(
        id, rule -> RulePages.page(rule).flatMap(text -> rulePage(rule, text)));
  }

  /** Puts a page that was made just now where it can be read, in place of an older one. */
  Optional<String> ofReport(String name, String page) {
    // A name comes from the client and becomes a file: nothing in it may lead elsewhere.
    String safe = name.replaceAll("[^\\p{L}\\p{N}-]", "_");
    return held
        ? hold("reports", safe, page)
        : write(safe, page).map(Path::toUri).map(URI::toString);
  }

  /** The text behind a URI of our own scheme. */
  Optional<String> text(String uri) {
    try {
      URI parsed = URI.create(uri);
      return SCHEME.equals(parsed.getScheme()) && parsed.getPath() != null
          ? Optional.ofNullable(texts.get(parsed.getPath()))
          : Optional.empty();
    } catch (IllegalArgumentException unusable) {
      return Optional.empty();
    }
  }

  private static URI held(String path) {
    try {
      return new URI(SCHEME, null, path, null);
    } catch (URISyntaxException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private Optional<String> rulePage(String rule, String text) {
    return held
        ? hold("rules", rule, text)
        : CacheFolder.readOnly(CacheFolder.usual().resolve("rules").resolve(rule + ".md"), text)
            .map(Path::toUri)
            .map(URI::toString);
  }

  private Optional<String> hold(String shelf, String name, String text) {
    URI uri = held("/" + shelf + "/" + name + ".md");
    texts.put(uri.getPath(), text);
    return Optional.of(uri.toASCIIString());
  }

  private synchronized Optional<Path> write(String name, String text) {
    if (unwritable) {
      return Optional.empty();
    }
    try {
      if (folder == null) {
        folder = Files.createTempDirectory("kettlemark-pages");
      }
      Path page = folder.resolve(name + ".md");
      Files.writeString(page, text, StandardCharsets.UTF_8);
      return Optional.of(page);
    } catch (IOException failure) {
      unwritable = true;
      LOG.warning(() -> "no pages can be written: " + failure.getMessage());
      return Optional.empty();
    }
  }

  /** Takes the files away. */
  synchronized void close() {
    if (folder == null) {
      return;
    }
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted((a, b) -> b.compareTo(a)).toList()) {
        Files.deleteIfExists(file);
      }
    } catch (IOException left) {
      LOG.fine(() -> "pages were left behind in " + folder);
    }
    folder = null;
    unwritable = true;
  }
}
