package dev.kettlemark.protocol;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.jspecify.annotations.Nullable;

/**
 * The workspace folders of a client, as it spells them.
 *
 * <p>They are read once the client can be told how far that is, or at the first document that it opens.
 */
final class Folders {

  private final Libraries libraries;
  private final Works works;
  private final List<String> spelled = new ArrayList<>();
  private final List<String> unread = new ArrayList<>();

  Folders(Libraries libraries, Works works) {
    this.libraries = libraries;
    this.works = works;
  }

  /** The folders that a client names when it begins. */
  void named(InitializeParams params) {
    if (params.getWorkspaceFolders() != null) {
      params.getWorkspaceFolders().forEach(this::add);
    } else if (rootUri(params) != null) {
      add(new WorkspaceFolder(rootUri(params), ""));
    }
  }

  @SuppressWarnings("deprecation") // Older clients name their only folder in this way.
  private static @Nullable String rootUri(InitializeParams params) {
    return params.getRootUri();
  }

  void add(WorkspaceFolder folder) {
    if (!spelled.contains(folder.getUri())) {
      spelled.add(folder.getUri());
      unread.add(folder.getUri());
    }
  }

  void remove(WorkspaceFolder folder) {
    spelled.remove(folder.getUri());
    unread.remove(folder.getUri());
    Uris.path(folder.getUri()).ifPresent(libraries::removeFolder);
  }

  /**
   * Reads what has not been read yet.
   *
   * @param shown whether the client shows how far that is
   * @param warning told of a folder that cannot be read at all
   */
  void open(boolean shown, Consumer<String> warning) {
    if (unread.isEmpty()) {
      return;
    }
    List<String> now = List.copyOf(unread);
    unread.clear();
    works.own(
        shown,
        "Opening the library",
        work -> now.forEach(uri -> Uris.path(uri).ifPresent(path -> {
          if (!Files.isReadable(path)) {
            warning.accept("The folder " + path + " cannot be read, so its formulas take no part.");
          }
          libraries.addFolder(path, uri, work);
        })));
  }

  List<String> spelled() {
    return List.copyOf(spelled);
  }

  /** The innermost folder that holds a document. */
  Optional<String> spelledOf(String key) {
    return Uris.path(key)
        .flatMap(path -> spelled.stream()
            .filter(uri -> Uris.path(uri).filter(path::startsWith).isPresent())
            .max(Comparator.comparingInt(
                uri -> Uris.path(uri).map(Path::getNameCount).orElse(0))));
  }
}
