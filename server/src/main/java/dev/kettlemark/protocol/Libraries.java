package dev.kettlemark.protocol;

import dev.kettlemark.files.KettleFolder;
import dev.kettlemark.files.TextFile;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.logging.Logger;

/**
 * The libraries that a client works on: one for each workspace folder, and one for the folder of each
 * file that lies outside of all of them, without the folders below it.
 */
final class Libraries {

  private static final Logger LOG = Logger.getLogger(Libraries.class.getName());

  private final Map<Path, LiveLibrary> byFolder = new LinkedHashMap<>();
  private final Supplier<LocalDate> today;
  private final LiveLibrary untitled;

  Libraries(Supplier<LocalDate> today) {
    this.today = today;
    this.untitled = new LiveLibrary(today);
  }

  /** Adds a workspace folder, read at once. */
  void addFolder(Path folder) {
    byFolder.computeIfAbsent(folder, f -> read(KettleFolder.below(f, Libraries::passOver)));
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
          : byFolder.computeIfAbsent(folder, f -> read(KettleFolder.in(f, Libraries::passOver)));
    });
  }

  /** The library of the innermost folder that holds a path. */
  Optional<LiveLibrary> known(Path path) {
    return byFolder.entrySet().stream()
        .filter(entry -> path.startsWith(entry.getKey()))
        .max(Comparator.comparingInt(entry -> entry.getKey().getNameCount()))
        .map(Map.Entry::getValue);
  }

  private LiveLibrary read(List<Path> files) {
    Map<String, String> texts = new HashMap<>();
    for (Path file : files) {
      try {
        texts.put(Uris.key(file), TextFile.read(file));
      } catch (IOException unreadable) {
        passOver(file, unreadable);
      }
    }
    LiveLibrary library = new LiveLibrary(today);
    library.load(texts);
    return library;
  }

  /** What cannot be read takes no part; the log of the server says why. */
  private static void passOver(Path path, IOException failure) {
    LOG.warning(() -> "cannot read " + path + ": " + TextFile.why(failure));
  }
}
