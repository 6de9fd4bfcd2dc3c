package dev.kettlemark.protocol;

import dev.kettlemark.files.KettleFolder;
import dev.kettlemark.files.TextFile;
import dev.kettlemark.library.Document;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.logging.Logger;

/**
 * The libraries that a client works on: one for each workspace folder, and one for the folder of each
 * file that lies outside of all of them, without the folders below it.
 */
final class Libraries {

  private static final Logger LOG = Logger.getLogger(Libraries.class.getName());

  /** So many files are read on all cores before the client is told how far that is. */
  private static final int TOGETHER = 64;

  private final Map<Path, LiveLibrary> byFolder = new LinkedHashMap<>();
  private final Map<Path, String> byRealPath = new ConcurrentHashMap<>();
  private final Supplier<LocalDate> today;
  private final Consumer<String> troubles;
  private final LiveLibrary untitled;

  /**
   * No libraries yet.
   *
   * @param troubles told of what cannot be read
   */
  Libraries(Supplier<LocalDate> today, Consumer<String> troubles) {
    this.today = today;
    this.troubles = troubles;
    this.untitled = new LiveLibrary(today, key -> key);
  }

  /**
   * Adds a workspace folder, read at once.
   *
   * @param spelled the folder's URI as the client spells it
   */
  void addFolder(Path folder, String spelled, Work work) {
    if (!byFolder.containsKey(folder)) {
      byFolder.put(
          folder,
          read(KettleFolder.below(folder, this::passOver), spelling(folder, spelled), work));
    }
  }

  void removeFolder(Path folder) {
    LiveLibrary library = byFolder.get(folder);
    if (library != null && library.moment().open().isEmpty()) {
      byFolder.remove(folder);
    }
  }

  Collection<LiveLibrary> all() {
    Map<LiveLibrary, Boolean> all = new LinkedHashMap<>();
    byFolder.values().forEach(library -> all.put(library, true));
    all.put(untitled, true);
    return all.keySet();
  }

  /**
   * The library's spelling of a document, the same for every URI that leads to it.
   *
   * <p>A file that is not known by its path may be known by another one that a link leads to.
   */
  String key(String uri) {
    Optional<Path> path = Uris.path(uri);
    if (path.isEmpty()) {
      return uri;
    }
    String key = Uris.key(path.get());
    return holds(key)
        ? key
        : Optional.ofNullable(byRealPath.get(real(path.get())))
            .filter(this::holds)
            .orElse(key);
  }

  private boolean holds(String key) {
    return Uris.path(key)
        .flatMap(this::known)
        .flatMap(library -> library.moment().document(key))
        .isPresent();
  }

  private static Path real(Path path) {
    try {
      return path.toRealPath();
    } catch (IOException absent) {
      return path;
    }
  }

  /** The library that holds a document; a file outside of all folders brings in its own folder. */
  LiveLibrary of(String key) {
    Optional<Path> path = Uris.path(key);
    if (path.isEmpty()) {
      return untitled;
    }
    return known(path.get()).orElseGet(() -> {
      Path folder = path.get().getParent();
      return folder == null
          ? untitled
          : byFolder.computeIfAbsent(
              folder, f -> read(KettleFolder.in(f, this::passOver), k -> k, Work.unwatched()));
    });
  }

  /** The library of the innermost folder that holds a path. */
  Optional<LiveLibrary> known(Path path) {
    return byFolder.entrySet().stream()
        .filter(entry -> path.startsWith(entry.getKey()))
        .max(Comparator.comparingInt(entry -> entry.getKey().getNameCount()))
        .map(Map.Entry::getValue);
  }

  /** The text of a file, empty where there is none that can be read. */
  Optional<String> read(Path file) {
    try {
      String text = TextFile.read(file);
      byRealPath.putIfAbsent(real(file), Uris.key(file));
      return Optional.of(text);
    } catch (IOException unreadable) {
      passOver(file, unreadable);
      return Optional.empty();
    }
  }

  private Optional<Document> document(Path file) {
    String key = Uris.key(file);
    return read(file).map(text -> Document.of(key, text).learnt());
  }

  private LiveLibrary read(List<Path> files, UnaryOperator<String> spelling, Work work) {
    List<Document> documents = new ArrayList<>();
    for (int first = 0; first < files.size(); first += TOGETHER) {
      work.step(first, files.size());
      files.subList(first, Math.min(first + TOGETHER, files.size())).parallelStream()
          .map(this::document)
          .flatMap(Optional::stream)
          .forEachOrdered(documents::add);
    }
    work.step(files.size(), files.size());
    LiveLibrary library = new LiveLibrary(today, spelling);
    library.load(documents);
    return library;
  }

  /** Files of a folder are spelled as the client spells the folder. */
  private static UnaryOperator<String> spelling(Path folder, String spelled) {
    String own = slashed(Uris.key(folder));
    String theirs = slashed(spelled);
    return key -> key.startsWith(own) ? theirs + key.substring(own.length()) : key;
  }

  private static String slashed(String uri) {
    return uri.endsWith("/") ? uri : uri + "/";
  }

  /** What cannot be read takes no part; the logs of server and client say why. */
  private void passOver(Path path, IOException failure) {
    String told = "cannot read " + path + ": " + TextFile.why(failure);
    LOG.warning(told);
    troubles.accept(told);
  }
}
