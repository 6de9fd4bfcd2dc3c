package dev.kettlemark.protocol;

import java.util.List;
import java.util.stream.Stream;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionOptions;
import org.eclipse.lsp4j.CodeLensOptions;
import org.eclipse.lsp4j.CompletionOptions;
import org.eclipse.lsp4j.DidChangeWatchedFilesRegistrationOptions;
import org.eclipse.lsp4j.ExecuteCommandOptions;
import org.eclipse.lsp4j.FileSystemWatcher;
import org.eclipse.lsp4j.Registration;
import org.eclipse.lsp4j.RegistrationParams;
import org.eclipse.lsp4j.RenameOptions;
import org.eclipse.lsp4j.ServerCapabilities;
import org.eclipse.lsp4j.TextDocumentSyncKind;
import org.eclipse.lsp4j.TextDocumentSyncOptions;
import org.eclipse.lsp4j.WorkspaceFoldersOptions;
import org.eclipse.lsp4j.WorkspaceServerCapabilities;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/** What the server offers to a client. */
final class Capabilities {

  private Capabilities() {}

  static ServerCapabilities of(ClientTraits client) {
    ServerCapabilities offered = new ServerCapabilities();
    offered.setPositionEncoding(client.positions().encoding().word());
    TextDocumentSyncOptions sync = new TextDocumentSyncOptions();
    sync.setOpenClose(true);
    sync.setChange(TextDocumentSyncKind.Incremental);
    offered.setTextDocumentSync(sync);
    offered.setHoverProvider(true);
    offered.setInlayHintProvider(true);
    offered.setCodeLensProvider(new CodeLensOptions(false));
    CodeActionOptions actions = new CodeActionOptions(Stream.concat(
            Stream.of(
                CodeActionKind.QuickFix, CodeActionKind.RefactorRewrite, ActionAdapter.FIX_ALL),
            RefactoringAdapter.KINDS.stream())
        .toList());
    offered.setCodeActionProvider(actions);
    offered.setDocumentFormattingProvider(true);
    offered.setDocumentRangeFormattingProvider(true);
    offered.setDocumentSymbolProvider(true);
    offered.setWorkspaceSymbolProvider(true);
    offered.setFoldingRangeProvider(true);
    offered.setSelectionRangeProvider(true);
    offered.setDefinitionProvider(true);
    offered.setReferencesProvider(true);
    offered.setDocumentHighlightProvider(true);
    offered.setRenameProvider(new RenameOptions(true));
    offered.setCompletionProvider(new CompletionOptions(false, List.of(" ")));
    offered.setExecuteCommandProvider(new ExecuteCommandOptions(Commands.NAMES));
    WorkspaceFoldersOptions folders = new WorkspaceFoldersOptions();
    folders.setSupported(true);
    folders.setChangeNotifications(true);
    offered.setWorkspace(new WorkspaceServerCapabilities(folders));
    return offered;
  }

  /** Asks the client to tell of formula files that change on the disk. */
  static RegistrationParams watchedFiles() {
    FileSystemWatcher watcher = new FileSystemWatcher(Either.forLeft("**/*.kettle"));
    return new RegistrationParams(List.of(new Registration(
        "kettlemark-files",
        "workspace/didChangeWatchedFiles",
        new DidChangeWatchedFilesRegistrationOptions(List.of(watcher)))));
  }
}
