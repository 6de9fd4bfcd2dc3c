package dev.kettlemark.cli;

import dev.kettlemark.files.CacheFolder;
import dev.kettlemark.files.ProgramFiles;
import dev.kettlemark.files.SiteFolder;
import dev.kettlemark.files.TextFile;
import dev.kettlemark.publishing.Manifest;
import dev.kettlemark.publishing.Wanted;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

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

  /** Asks the files alone: where nothing has changed, nobody needs to know what stands in them. */
  static SiteMemory of(Path library, Wanted wanted, LocalDate today, Path site) {
    Optional<String> key = texts(library)
        .flatMap(texts -> ProgramFiles.hash()
            .map(program -> Manifest.hash(String.join(
                "\n",
                program,
                Runtime.version().toString(),
                Locale.getDefault().toString(),
                today.toString(),
                wanted.locale().toLanguageTag(),
                wanted.readers().toString(),
                wanted.statuses().stream().sorted().toList().toString(),
                texts))));
    String place = Manifest.hash(site.toAbsolutePath().normalize().toString());
    return new SiteMemory(key, CacheFolder.usual().resolve("published").resolve(place + ".txt"));
  }

  /** All texts of a library, each with its name; empty where one of them cannot be read. */
  private static Optional<String> texts(Path library) {
    List<String> problems = new ArrayList<>();
    List<String> texts = new ArrayList<>();
    try {
      for (Path file : KettleFiles.below(library, problems::add)) {
        texts.add(KettleFiles.uri(file) + " " + Manifest.hash(Files.readAllBytes(file)));
      }
    } catch (IOException unreadable) {
      problems.add(TextFile.why(unreadable));
    }
    return problems.isEmpty() ? Optional.of(String.join("\n", texts)) : Optional.empty();
  }

  /** Whether it is made from what the other is made from; a text may have changed in between. */
  boolean isAs(SiteMemory other) {
    return key.equals(other.key);
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
      if (site.bytes(page.getKey())
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
