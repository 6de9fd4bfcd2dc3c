package dev.kettlemark.cli;

import dev.kettlemark.files.CacheFolder;
import dev.kettlemark.files.ProgramFiles;
import dev.kettlemark.files.SiteFolder;
import dev.kettlemark.publishing.Manifest;
import dev.kettlemark.publishing.Wanted;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a site was last made from, so that it is not made again from the same.
 *
 * <p>A page may rest on any text of the library, the day, the wishes, the program and its Java. The key is
 * the hash of all of them: whatever differs, all pages are worked out again and held against those that are
 * there. It lies in the cache of the user and not in the site, which would otherwise change each morning.
 */
final class SiteMemory {

  private final Optional<String> key;
  private final Path file;

  private SiteMemory(Optional<String> key, Path file) {
    this.key = key;
    this.file = file;
  }

  static SiteMemory of(LibraryFolder library, Wanted wanted, LocalDate today, Path site) {
    Optional<String> key = library.problems().isEmpty()
        ? ProgramFiles.hash()
            .map(program -> Manifest.hash(String.join(
                "\n",
                program,
                Runtime.version().toString(),
                Locale.getDefault().toString(),
                today.toString(),
                wanted.locale().toLanguageTag(),
                wanted.readers().toString(),
                wanted.statuses().stream().sorted().toList().toString(),
                texts(library))))
        : Optional.empty();
    String place = Manifest.hash(site.toAbsolutePath().normalize().toString());
    return new SiteMemory(key, CacheFolder.usual().resolve("published").resolve(place + ".txt"));
  }

  private static String texts(LibraryFolder library) {
    return library.snapshot().library().documents().stream()
        .map(document ->
            Manifest.hash(document.uri() + "\n" + document.text().source().text()))
        .collect(Collectors.joining("\n"));
  }

  /**
   * The manifest of a site that was made from the very same, and of which nothing has been touched since;
   * empty where that is not certain.
   */
  Optional<Manifest> holding(SiteFolder site) throws IOException {
    String text = site.read(Manifest.FILE).orElse("");
    if (key.isEmpty() || !known().equals(line(text))) {
      return Optional.empty();
    }
    Optional<Manifest> manifest = Manifest.of(text);
    if (manifest.isEmpty()) {
      return Optional.empty();
    }
    for (Map.Entry<String, Manifest.Written> page : manifest.get().pages().entrySet()) {
      if (site.read(page.getKey())
          .map(Manifest::hash)
          .filter(page.getValue().hash()::equals)
          .isEmpty()) {
        return Optional.empty();
      }
    }
    return manifest;
  }

  /** Notes what a site holds now. Where the cache cannot be written, it is made again the next time. */
  void remember(SiteFolder site) throws IOException {
    if (key.isPresent()) {
      var unused = CacheFolder.readOnly(file, line(site.read(Manifest.FILE).orElse("")));
    }
  }

  private String line(String manifest) {
    return key.orElse("") + "\n" + Manifest.hash(manifest) + "\n";
  }

  private String known() {
    try {
      return Files.isRegularFile(file) ? Files.readString(file) : "";
    } catch (IOException unreadable) {
      return "";
    }
  }
}
