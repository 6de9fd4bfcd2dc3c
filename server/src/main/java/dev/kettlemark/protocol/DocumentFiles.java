package dev.kettlemark.protocol;

import java.util.List;
import java.util.stream.Stream;
import org.eclipse.lsp4j.CreateFilesParams;
import org.eclipse.lsp4j.DeleteFilesParams;
import org.eclipse.lsp4j.FileChangeType;
import org.eclipse.lsp4j.FileEvent;
import org.eclipse.lsp4j.FileOperationFilter;
import org.eclipse.lsp4j.FileOperationOptions;
import org.eclipse.lsp4j.FileOperationPattern;
import org.eclipse.lsp4j.FileOperationPatternKind;
import org.eclipse.lsp4j.FileOperationsServerCapabilities;
import org.eclipse.lsp4j.RenameFilesParams;

/**
 * Files and folders that a user created, renamed or deleted in the editor.
 *
 * <p>Names belong to the whole library and nothing in the language refers to a path, so that a file may
 * move without any edit; the server only wants to hear of it afterwards. Unlike watched files these
 * events also tell of folders.
 */
final class DocumentFiles {

  private DocumentFiles() {}

  static List<FileEvent> events(CreateFilesParams params) {
    return params.getFiles().stream()
        .map(file -> new FileEvent(file.getUri(), FileChangeType.Created))
        .toList();
  }

  static List<FileEvent> events(RenameFilesParams params) {
    return params.getFiles().stream()
        .flatMap(file -> Stream.of(
            new FileEvent(file.getOldUri(), FileChangeType.Deleted),
            new FileEvent(file.getNewUri(), FileChangeType.Created)))
        .toList();
  }

  static List<FileEvent> events(DeleteFilesParams params) {
    return params.getFiles().stream()
        .map(file -> new FileEvent(file.getUri(), FileChangeType.Deleted))
        .toList();
  }

  /** Formula files, and all folders. */
  static FileOperationsServerCapabilities offered() {
    FileOperationPattern folders = new FileOperationPattern("**");
    folders.setMatches(FileOperationPatternKind.Folder);
    FileOperationOptions all = new FileOperationOptions(List.of(
        new FileOperationFilter(new FileOperationPattern("**/*.kettle"), "file"),
        new FileOperationFilter(folders, "file")));
    FileOperationsServerCapabilities offered = new FileOperationsServerCapabilities();
    offered.setDidCreate(all);
    offered.setDidRename(all);
    offered.setDidDelete(all);
    return offered;
  }
}
