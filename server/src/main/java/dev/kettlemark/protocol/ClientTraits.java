package dev.kettlemark.protocol;

import java.util.Optional;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeActionCapabilities;
import org.eclipse.lsp4j.CompletionCapabilities;
import org.eclipse.lsp4j.CompletionItemCapabilities;
import org.eclipse.lsp4j.DidChangeWatchedFilesCapabilities;
import org.eclipse.lsp4j.GeneralClientCapabilities;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.PublishDiagnosticsCapabilities;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;

/**
 * What a client said it can do, as far as answers depend on it.
 *
 * @param positions how it counts columns
 * @param showsRelated whether it shows related places of a diagnostic
 * @param readsActions whether it reads code actions, not only commands
 * @param readsSnippets whether completion may hold placeholders
 * @param readsDocumentChanges whether edits may name document versions
 * @param readsSnippetEdits whether edits may hold placeholders
 * @param watchesOnRequest whether it watches files that the server asks for
 * @param refreshesHints whether it fetches inlay hints again when told to
 * @param refreshesLenses whether it fetches code lenses again when told to
 * @param plumbing in which ways it can be told, asked and shown things
 * @param language what it can do with the features that speak the language
 */
record ClientTraits(
    Positions positions,
    boolean showsRelated,
    boolean readsActions,
    boolean readsSnippets,
    boolean readsDocumentChanges,
    boolean readsSnippetEdits,
    boolean watchesOnRequest,
    boolean refreshesHints,
    boolean refreshesLenses,
    ClientPlumbing plumbing,
    LanguageTraits language) {

  static ClientTraits of(InitializeParams params) {
    Optional<ClientCapabilities> client = Optional.ofNullable(params.getCapabilities());
    Optional<TextDocumentClientCapabilities> text = client.map(ClientCapabilities::getTextDocument);
    Optional<WorkspaceClientCapabilities> workspace = client.map(ClientCapabilities::getWorkspace);
    return new ClientTraits(
        Positions.negotiated(client
            .map(ClientCapabilities::getGeneral)
            .map(GeneralClientCapabilities::getPositionEncodings)
            .orElse(null)),
        text.map(TextDocumentClientCapabilities::getPublishDiagnostics)
            .map(PublishDiagnosticsCapabilities::getRelatedInformation)
            .orElse(false),
        text.map(TextDocumentClientCapabilities::getCodeAction)
            .map(CodeActionCapabilities::getCodeActionLiteralSupport)
            .isPresent(),
        text.map(TextDocumentClientCapabilities::getCompletion)
            .map(CompletionCapabilities::getCompletionItem)
            .map(CompletionItemCapabilities::getSnippetSupport)
            .orElse(false),
        workspace
            .map(WorkspaceClientCapabilities::getWorkspaceEdit)
            .map(edit -> edit.getDocumentChanges())
            .orElse(false),
        workspace
            .map(WorkspaceClientCapabilities::getWorkspaceEdit)
            .map(edit -> edit.getSnippetEditSupport())
            .orElse(false),
        workspace
            .map(WorkspaceClientCapabilities::getDidChangeWatchedFiles)
            .map(DidChangeWatchedFilesCapabilities::getDynamicRegistration)
            .orElse(false),
        workspace
            .map(WorkspaceClientCapabilities::getInlayHint)
            .map(hint -> hint.getRefreshSupport())
            .orElse(false),
        workspace
            .map(WorkspaceClientCapabilities::getCodeLens)
            .map(lens -> lens.getRefreshSupport())
            .orElse(false),
        ClientPlumbing.of(params),
        LanguageTraits.of(params));
  }
}
