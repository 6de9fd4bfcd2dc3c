package dev.kettlemark.protocol;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.DidChangeWorkspaceFoldersParams;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.SymbolInformation;
import org.eclipse.lsp4j.TextDocumentContentParams;
import org.eclipse.lsp4j.TextDocumentContentResult;
import org.eclipse.lsp4j.TextDocumentIdentifier;
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
    Settings before = state.settings();
    state.set(Settings.of(params.getSettings(), before));
    if (before.equals(state.settings())) {
      return;
    }
    if (state.traits().refreshesHints()) {
      var unused = state.client().refreshInlayHints();
    }
    if (state.traits().refreshesLenses()) {
      var unused = state.client().refreshCodeLenses();
    }
  }

  @Override
  public void didChangeWatchedFiles(DidChangeWatchedFilesParams params) {
    state.onDisk(params.getChanges());
  }

  @Override
  public void didChangeWorkspaceFolders(DidChangeWorkspaceFoldersParams params) {
    params.getEvent().getRemoved().forEach(state::removeFolder);
    params.getEvent().getAdded().forEach(state::addFolder);
  }

  @Override
  public CompletableFuture<
          Either<List<? extends SymbolInformation>, List<? extends WorkspaceSymbol>>>
      symbol(WorkspaceSymbolParams params) {
    List<Moment> moments = state.moments();
    return state.compute(() ->
        Either.forRight(OutlineAdapter.librarySymbols(moments, state.traits(), params.getQuery())));
  }

  @Override
  public CompletableFuture<Object> executeCommand(ExecuteCommandParams params) {
    return Commands.run(state, params);
  }

  /** The text of a page that is no file: one of the pantry. */
  @Override
  public CompletableFuture<TextDocumentContentResult> textDocumentContent(
      TextDocumentContentParams params) {
    return state.answer(
        new TextDocumentIdentifier(params.getUri()),
        new TextDocumentContentResult(""),
        scene -> new TextDocumentContentResult(scene.source().text()));
  }
}
