package dev.kettlemark.protocol;

import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionOptions;
import org.eclipse.lsp4j.CodeLensOptions;
import org.eclipse.lsp4j.CompletionOptions;
import org.eclipse.lsp4j.DiagnosticRegistrationOptions;
import org.eclipse.lsp4j.DidChangeWatchedFilesRegistrationOptions;
import org.eclipse.lsp4j.ExecuteCommandOptions;
import org.eclipse.lsp4j.FileSystemWatcher;
import org.eclipse.lsp4j.InlayHintRegistrationOptions;
import org.eclipse.lsp4j.ReferenceOptions;
import org.eclipse.lsp4j.Registration;
import org.eclipse.lsp4j.RenameOptions;
import org.eclipse.lsp4j.ServerCapabilities;
import org.eclipse.lsp4j.TextDocumentContentRegistrationOptions;
import org.eclipse.lsp4j.TextDocumentSyncKind;
import org.eclipse.lsp4j.TextDocumentSyncOptions;
import org.eclipse.lsp4j.WorkspaceFoldersOptions;
import org.eclipse.lsp4j.WorkspaceServerCapabilities;
import org.eclipse.lsp4j.WorkspaceSymbolOptions;
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
    offered.setFoldingRangeProvider(true);
    offered.setSelectionRangeProvider(true);
    offered.setDefinitionProvider(true);
    offered.setDocumentHighlightProvider(true);
    offered.setCompletionProvider(new CompletionOptions(false, List.of(" ")));
    WorkspaceFoldersOptions folders = new WorkspaceFoldersOptions();
    folders.setSupported(true);
    folders.setChangeNotifications(true);
    offered.setWorkspace(new WorkspaceServerCapabilities(folders));
    offerPlumbing(offered, client);
    LanguageCapabilities.addTo(offered, client.language());
    return offered;
  }

  /** Ways of asking and answering; a way that the client did not speak of is not offered. */
  private static void offerPlumbing(ServerCapabilities offered, ClientTraits client) {
    ClientPlumbing plumbing = client.plumbing();
    if (plumbing.pulls().documents()) {
      DiagnosticRegistrationOptions pull = new DiagnosticRegistrationOptions(true, true);
      pull.setIdentifier(DiagnosticAdapter.SOURCE);
      pull.setWorkDoneProgress(true);
      offered.setDiagnosticProvider(pull);
    }
    ReferenceOptions references = new ReferenceOptions();
    references.setWorkDoneProgress(true);
    offered.setReferencesProvider(references);
    RenameOptions rename = new RenameOptions(true);
    rename.setWorkDoneProgress(true);
    offered.setRenameProvider(rename);
    ExecuteCommandOptions commands = new ExecuteCommandOptions(Commands.names(client));
    commands.setWorkDoneProgress(true);
    offered.setExecuteCommandProvider(commands);
    WorkspaceSymbolOptions symbols = new WorkspaceSymbolOptions();
    symbols.setWorkDoneProgress(true);
    if (plumbing.resolves().ranges()) {
      symbols.setResolveProvider(true);
    }
    offered.setWorkspaceSymbolProvider(symbols);
    if (plumbing.resolves().tooltips()) {
      InlayHintRegistrationOptions hints = new InlayHintRegistrationOptions();
      hints.setResolveProvider(true);
      offered.setInlayHintProvider(hints);
    }
    if (plumbing.resolves().lenses()) {
      offered.setCodeLensProvider(new CodeLensOptions(true));
    }
    if (plumbing.resolves().edits()) {
      offered.getCodeActionProvider().getRight().setResolveProvider(true);
    }
    if (!client.readsActions()) {
      offered.setCodeActionProvider(true);
    }
    if (plumbing.tellsFiles()) {
      offered.getWorkspace().setFileOperations(DocumentFiles.offered());
    }
    if (plumbing.window().contents()) {
      offered
          .getWorkspace()
          .setTextDocumentContent(new TextDocumentContentRegistrationOptions(
              List.of(Pages.SCHEME, PantryPages.SCHEME)));
    }
  }

  /** What the client should tell of: formula files that change on the disk, and changed settings. */
  static List<Registration> registrations(ClientTraits client) {
    List<Registration> wanted = new ArrayList<>();
    if (client.watchesOnRequest()) {
      FileSystemWatcher watcher = new FileSystemWatcher(Either.forLeft("**/*.kettle"));
      wanted.add(new Registration(
          "kettlemark-files",
          "workspace/didChangeWatchedFiles",
          new DidChangeWatchedFilesRegistrationOptions(List.of(watcher))));
    }
    if (client.plumbing().registersSettings()) {
      JsonObject options = new JsonObject();
      options.addProperty("section", Configuration.SECTION);
      wanted.add(
          new Registration("kettlemark-settings", "workspace/didChangeConfiguration", options));
    }
    return List.copyOf(wanted);
  }
}
