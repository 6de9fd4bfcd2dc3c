package dev.kettlemark.protocol;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.eclipse.lsp4j.CreateFilesParams;
import org.eclipse.lsp4j.DeleteFilesParams;
import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.DidChangeWorkspaceFoldersParams;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.PreviousResultId;
import org.eclipse.lsp4j.RenameFilesParams;
import org.eclipse.lsp4j.SymbolInformation;
import org.eclipse.lsp4j.TextDocumentContentParams;
import org.eclipse.lsp4j.TextDocumentContentResult;
import org.eclipse.lsp4j.WorkspaceDiagnosticParams;
import org.eclipse.lsp4j.WorkspaceDiagnosticReport;
import org.eclipse.lsp4j.WorkspaceDiagnosticReportPartialResult;
import org.eclipse.lsp4j.WorkspaceSymbol;
import org.eclipse.lsp4j.WorkspaceSymbolParams;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.services.WorkspaceService;

/** The requests about all libraries together. */
@SuppressWarnings(
    "deprecation") // The interface still names the older symbol type in its signature.
final class LibraryService implements WorkspaceService {

  private final ServerState state;

  LibraryService(ServerState state) {
    this.state = state;
  }

  @Override
  public void didChangeConfiguration(DidChangeConfigurationParams params) {
    state.settingsChanged(params.getSettings());
  }

  @Override
  public void didChangeWatchedFiles(DidChangeWatchedFilesParams params) {
    state.onDisk(params.getChanges());
  }

  @Override
  public void didChangeWorkspaceFolders(DidChangeWorkspaceFoldersParams params) {
    params.getEvent().getRemoved().forEach(state::removeFolder);
    params.getEvent().getAdded().forEach(state::addFolder);
    state.askForSettings();
  }

  @Override
  public void didCreateFiles(CreateFilesParams params) {
    state.onDisk(DocumentFiles.events(params));
  }

  @Override
  public void didRenameFiles(RenameFilesParams params) {
    state.onDisk(DocumentFiles.events(params));
  }

  @Override
  public void didDeleteFiles(DeleteFilesParams params) {
    state.onDisk(DocumentFiles.events(params));
  }

  @Override
  public CompletableFuture<WorkspaceDiagnosticReport> diagnostic(WorkspaceDiagnosticParams params) {
    List<Moment> moments = state.moments();
    Map<String, PreviousResultId> known = new HashMap<>();
    params.getPreviousResultIds().forEach(each -> known.put(state.key(each.getUri()), each));
    return state
        .works()
        .start(
            params,
            "Checking the library",
            work -> new WorkspaceDiagnosticReport(state
                .pull()
                .workspace(
                    moments,
                    known,
                    state.works().parts(params, WorkspaceDiagnosticReportPartialResult::new),
                    work)));
  }

  /** The text of a page that is no file: one of a rule, a report, or the pantry. */
  @Override
  public CompletableFuture<TextDocumentContentResult> textDocumentContent(
      TextDocumentContentParams params) {
    String text = state
        .pages()
        .text(params.getUri())
        .or(() -> state.scene(params.getUri()).map(scene -> scene.source().text()))
        .orElseThrow(() -> ScaleCommand.refused("there is no page " + params.getUri()));
    return CompletableFuture.completedFuture(new TextDocumentContentResult(text));
  }

  @Override
  public CompletableFuture<WorkspaceSymbol> resolveWorkspaceSymbol(WorkspaceSymbol unresolved) {
    return Resolving.symbol(state, unresolved);
  }

  @Override
  public CompletableFuture<
          Either<List<? extends SymbolInformation>, List<? extends WorkspaceSymbol>>>
      symbol(WorkspaceSymbolParams params) {
    List<Moment> moments = state.moments();
    return state
        .works()
        .start(
            params,
            "Searching",
            work -> Either.forRight(OutlineAdapter.librarySymbols(
                moments, state.traits(), params.getQuery(), state.works().parts(params), work)));
  }

  @Override
  public CompletableFuture<Object> executeCommand(ExecuteCommandParams params) {
    return Commands.run(state, params);
  }
}
