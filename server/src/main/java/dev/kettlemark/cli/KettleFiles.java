package dev.kettlemark.cli;

import dev.kettlemark.files.KettleFolder;
import dev.kettlemark.files.TextFile;
import dev.kettlemark.library.Document;
import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

/** Formula files as the user names them and as they are shown. */
final class KettleFiles {

  private KettleFiles() {}

  /** A path as the user typed it. */
  static Path path(String typed) {
    try {
      return Path.of(typed);
    } catch (InvalidPathException impossible) {
      throw new UsageMistake("no file can have the name " + Visible.of(typed));
    }
  }

  /**
   * The formula files below a folder, in order of name.
   *
   * @param problems told of each folder that cannot be read
   */
  static List<Path> below(Path folder, Consumer<String> problems) {
    return KettleFolder.below(
        folder, (path, failure) -> problems.accept(cannot("read", path, failure)));
  }

  /** How a document is named in a library. */
  static String uri(Path path) {
    return path.toAbsolutePath().normalize().toUri().toString();
  }

  /** A path as it is shown: as the user typed it, with forward slashes and without detours. */
  static String shown(Path path) {
    Path plain = path.normalize();
    String text = plain.toString().isEmpty() ? "." : plain.toString();
    return Visible.of(text.replace(path.getFileSystem().getSeparator(), "/"));
  }

  static Document document(Path path) throws IOException {
    return Document.of(uri(path), TextFile.read(path));
  }

  /** Why a file could not be read or written, in plain words. */
  static String cannot(String doWhat, Path path, IOException failure) {
    return "cannot " + doWhat + " " + shown(path) + ": " + TextFile.why(failure);
  }
}
