package dev.kettlemark.cli;

import dev.kettlemark.files.KettleFolder;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * All formula files below one folder, read as one library together with the built-in pantry.
 *
 * @param snapshot the library and what follows from it
 * @param paths where each document of it lies, by URI
 * @param reported the URIs of the documents that were asked for
 * @param problems what could not be read, in plain words
 */
record LibraryFolder(
    Snapshot snapshot, Map<String, Path> paths, Set<String> reported, List<String> problems) {

  LibraryFolder {
    paths = Map.copyOf(paths);
    reported = Set.copyOf(reported);
    problems = List.copyOf(problems);
  }

  /** Reads a folder on a day, and asks for all of it. */
  static LibraryFolder of(Path folder, LocalDate today) {
    if (!Files.isDirectory(folder)) {
      throw new UsageMistake(KettleFiles.shown(folder) + " is no folder");
    }
    return read(folder, Optional.empty(), today, Cores.all());
  }

  /**
   * Reads what the user named: each folder is a library of its own, and a file belongs to the library
   * of its folder, of which only the named files are asked for.
   *
   * @param typed files and folders; none for the current folder
   * @param library the folder that all named files belong to, if the user says so
   * @param today the day at which they are looked at
   * @param cores read the files
   */
  static List<LibraryFolder> of(
      List<String> typed, Optional<Path> library, LocalDate today, Cores cores) {
    Set<Path> folders = new LinkedHashSet<>();
    Map<Path, Set<Path>> files = new LinkedHashMap<>();
    for (String name : typed.isEmpty() ? List.of(".") : typed) {
      Path path = KettleFiles.path(name);
      if (Files.isDirectory(path) && library.isEmpty()) {
        folders.add(path);
      } else if (Files.isDirectory(path)) {
        files
            .computeIfAbsent(library.get(), key -> new LinkedHashSet<>())
            .addAll(KettleFiles.below(path, problem -> {}));
      } else if (Files.exists(path)) {
        files
            .computeIfAbsent(library.orElseGet(() -> folderOf(path)), key -> new LinkedHashSet<>())
            .add(path);
      } else {
        throw new UsageMistake("there is no file or folder " + KettleFiles.shown(path));
      }
    }
    List<LibraryFolder> result = new ArrayList<>();
    folders.stream()
        .filter(folder ->
            folders.stream().noneMatch(other -> isBelow(folder, other) && !isBelow(other, folder)))
        .forEach(folder -> result.add(read(folder, Optional.empty(), today, cores)));
    files.forEach((folder, named) -> {
      List<Path> open = named.stream()
          .filter(file -> folders.stream().noneMatch(given -> isBelow(file, given)))
          .toList();
      if (!open.isEmpty()) {
        result.add(read(folder, Optional.of(open), today, cores));
      }
    });
    return result;
  }

  /** The documents that were asked for, in order of name. */
  List<Document> documents() {
    return snapshot.library().ownDocuments().stream()
        .filter(document -> reported.contains(document.uri()))
        .toList();
  }

  /** Where a document lies as the user would name it; for the pantry, its own name. */
  String shown(String uri) {
    Path path = paths.get(uri);
    return path == null ? uri : KettleFiles.shown(path);
  }

  private static LibraryFolder read(
      Path folder, Optional<Collection<Path>> named, LocalDate today, Cores cores) {
    List<String> problems = new ArrayList<>();
    Map<String, Path> paths = new LinkedHashMap<>();
    Set<String> asked = new LinkedHashSet<>();
    Collection<Path> first = named.orElse(List.of());
    first.forEach(file -> asked.add(KettleFiles.uri(file)));
    // A named file may be a link to another one of the folder; as one text it is read once.
    KettleFolder.once(first, KettleFiles.below(folder, problems::add))
        .forEach(file -> paths.put(KettleFiles.uri(file), file));
    List<Document> documents = new ArrayList<>(Pantry.documents());
    TreeRoom room = new TreeRoom(TreeRoom.USUAL);
    for (FileRead read : cores.map(paths.values(), file -> FileRead.of(file, room))) {
      read.document().ifPresent(documents::add);
      read.problem().ifPresent(problems::add);
    }
    return new LibraryFolder(
        Snapshot.of(Library.of(documents), today),
        paths,
        named.isPresent() ? asked : paths.keySet(),
        problems);
  }

  /** A file of which either the document is known, or why there is none. */
  private record FileRead(Optional<Document> document, Optional<String> problem) {

    static FileRead of(Path file, TreeRoom room) {
      try {
        // What the library looks for in each section is read here, where others help.
        Document document = KettleFiles.document(file).learnt();
        return new FileRead(Optional.of(room.held(document)), Optional.empty());
      } catch (IOException failure) {
        return new FileRead(
            Optional.empty(), Optional.of(KettleFiles.cannot("read", file, failure)));
      }
    }
  }

  private static Path folderOf(Path file) {
    Path parent = file.getParent();
    return parent == null ? Path.of("") : parent;
  }

  private static boolean isBelow(Path path, Path folder) {
    return path.toAbsolutePath().normalize().startsWith(folder.toAbsolutePath().normalize());
  }
}
