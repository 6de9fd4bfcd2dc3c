package dev.kettlemark.cli;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A state of a library as the user names it: a folder, or {@code rev:} and a revision of one.
 *
 * @param name as it is shown
 * @param snapshot the library on the day of the command
 */
record LibraryState(String name, Snapshot snapshot) {

  /** What a revision starts with. */
  static final String REVISION = "rev:";

  /**
   * Reads a state, and tells of files that it had to leave out.
   *
   * @param folder the folder of which a revision is asked for
   */
  static LibraryState of(String typed, Path folder, Terminal terminal) {
    return typed.startsWith(REVISION)
        ? revision(typed, folder, terminal)
        : folder(KettleFiles.path(typed), terminal);
  }

  static LibraryState folder(Path folder, Terminal terminal) {
    LibraryFolder read = LibraryFolder.of(folder, terminal.today());
    read.problems().forEach(problem -> KettlemarkCommand.complain(terminal.err(), problem));
    return new LibraryState(KettleFiles.shown(folder), read.snapshot());
  }

  private static LibraryState revision(String typed, Path folder, Terminal terminal) {
    if (!Files.isDirectory(folder)) {
      throw new UsageMistake(KettleFiles.shown(folder) + " is no folder");
    }
    List<String> problems = new ArrayList<>();
    List<Document> documents = new ArrayList<>(Pantry.documents());
    new GitRevision(folder, "git")
        .texts(typed.substring(REVISION.length()), problems)
        .forEach((path, text) ->
            documents.add(Document.of(KettleFiles.uri(folder.resolve(path)), text)));
    problems.forEach(problem -> KettlemarkCommand.complain(terminal.err(), problem));
    return new LibraryState(
        Visible.of(typed) + " of " + KettleFiles.shown(folder),
        Snapshot.of(Library.of(documents), terminal.today()));
  }
}
