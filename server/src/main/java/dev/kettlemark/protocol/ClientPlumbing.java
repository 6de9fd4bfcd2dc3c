package dev.kettlemark.protocol;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeActionCapabilities;
import org.eclipse.lsp4j.DiagnosticCapabilities;
import org.eclipse.lsp4j.DiagnosticWorkspaceCapabilities;
import org.eclipse.lsp4j.FileOperationsWorkspaceCapabilities;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.PublishDiagnosticsCapabilities;
import org.eclipse.lsp4j.ShowDocumentCapabilities;
import org.eclipse.lsp4j.SymbolCapabilities;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.eclipse.lsp4j.WindowClientCapabilities;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.jspecify.annotations.Nullable;

/**
 * What a client said of the ways in which it can be told, asked and shown things.
 *
 * @param pulls how it fetches findings
 * @param actions what it reads of code actions
 * @param resolves what it fetches only when it is about to show it
 * @param window what it can show
 * @param asksForSettings whether the server may ask it for settings
 * @param registersSettings whether the server may register for changed settings
 * @param tellsFiles whether it tells of files that its user created, renamed or deleted
 * @param describesCodes whether the code of a finding may be a link
 * @param ownCommands commands that it carries out itself
 */
record ClientPlumbing(
    Pulls pulls,
    Actions actions,
    Resolves resolves,
    Window window,
    boolean asksForSettings,
    boolean registersSettings,
    boolean tellsFiles,
    boolean describesCodes,
    Set<String> ownCommands) {

  /**
   * How a client fetches findings.
   *
   * @param documents whether it does at all; it is then never sent any unasked
   * @param related whether an answer may bring findings of further documents
   * @param refreshes whether it fetches again when told to
   */
  record Pulls(boolean documents, boolean related, boolean refreshes) {}

  /**
   * What a client reads of code actions.
   *
   * @param preferred whether it knows the best of several
   * @param disabled whether it shows what cannot be done now, and why
   * @param applies whether it applies edits that the server sends
   */
  record Actions(boolean preferred, boolean disabled, boolean applies) {}

  /** What a client fetches only when it is about to show it. */
  record Resolves(boolean edits, boolean lenses, boolean tooltips, boolean ranges) {}

  /**
   * What a client can show.
   *
   * @param progress how far the server's own work is
   * @param documents a document that the server names
   * @param contents a document whose text the server holds
   */
  record Window(boolean progress, boolean documents, boolean contents) {}

  static ClientPlumbing of(InitializeParams params) {
    Optional<ClientCapabilities> client = Optional.ofNullable(params.getCapabilities());
    Optional<TextDocumentClientCapabilities> text = client.map(ClientCapabilities::getTextDocument);
    Optional<WorkspaceClientCapabilities> workspace = client.map(ClientCapabilities::getWorkspace);
    return new ClientPlumbing(
        pulls(text, workspace),
        actions(text, workspace),
        resolves(text, workspace),
        window(client.map(ClientCapabilities::getWindow), workspace),
        says(workspace, WorkspaceClientCapabilities::getConfiguration),
        says(
            workspace.map(WorkspaceClientCapabilities::getDidChangeConfiguration),
            settings -> settings.getDynamicRegistration()),
        tellsFiles(workspace.map(WorkspaceClientCapabilities::getFileOperations)),
        describesCodes(text),
        ownCommands(params.getInitializationOptions()));
  }

  private static Pulls pulls(
      Optional<TextDocumentClientCapabilities> text,
      Optional<WorkspaceClientCapabilities> workspace) {
    Optional<DiagnosticCapabilities> pull = text.map(TextDocumentClientCapabilities::getDiagnostic);
    return new Pulls(
        pull.isPresent(),
        says(pull, DiagnosticCapabilities::getRelatedDocumentSupport),
        says(
            workspace.map(WorkspaceClientCapabilities::getDiagnostics),
            DiagnosticWorkspaceCapabilities::getRefreshSupport));
  }

  private static Actions actions(
      Optional<TextDocumentClientCapabilities> text,
      Optional<WorkspaceClientCapabilities> workspace) {
    Optional<CodeActionCapabilities> actions =
        text.map(TextDocumentClientCapabilities::getCodeAction);
    return new Actions(
        says(actions, CodeActionCapabilities::getIsPreferredSupport),
        says(actions, CodeActionCapabilities::getDisabledSupport),
        says(workspace, WorkspaceClientCapabilities::getApplyEdit));
  }

  private static Resolves resolves(
      Optional<TextDocumentClientCapabilities> text,
      Optional<WorkspaceClientCapabilities> workspace) {
    Optional<CodeActionCapabilities> actions =
        text.map(TextDocumentClientCapabilities::getCodeAction);
    return new Resolves(
        says(actions, CodeActionCapabilities::getDataSupport)
            && holds(
                actions
                    .map(CodeActionCapabilities::getResolveSupport)
                    .map(support -> support.getProperties()),
                "edit"),
        holds(
            text.map(TextDocumentClientCapabilities::getCodeLens)
                .map(lens -> lens.getResolveSupport())
                .map(support -> support.getProperties()),
            "command"),
        holds(
            text.map(TextDocumentClientCapabilities::getInlayHint)
                .map(hint -> hint.getResolveSupport())
                .map(support -> support.getProperties()),
            "tooltip"),
        holds(
            workspace
                .map(WorkspaceClientCapabilities::getSymbol)
                .map(SymbolCapabilities::getResolveSupport)
                .map(support -> support.getProperties()),
            "location.range"));
  }

  private static Window window(
      Optional<WindowClientCapabilities> window, Optional<WorkspaceClientCapabilities> workspace) {
    return new Window(
        says(window, WindowClientCapabilities::getWorkDoneProgress),
        window
            .map(WindowClientCapabilities::getShowDocument)
            .map(ShowDocumentCapabilities::isSupport)
            .orElse(false),
        workspace.map(WorkspaceClientCapabilities::getTextDocumentContent).isPresent());
  }

  private static boolean tellsFiles(Optional<FileOperationsWorkspaceCapabilities> files) {
    return says(files, FileOperationsWorkspaceCapabilities::getDidCreate)
        || says(files, FileOperationsWorkspaceCapabilities::getDidRename)
        || says(files, FileOperationsWorkspaceCapabilities::getDidDelete);
  }

  private static boolean describesCodes(Optional<TextDocumentClientCapabilities> text) {
    return says(
            text.map(TextDocumentClientCapabilities::getPublishDiagnostics),
            PublishDiagnosticsCapabilities::getCodeDescriptionSupport)
        || says(
            text.map(TextDocumentClientCapabilities::getDiagnostic),
            DiagnosticCapabilities::getCodeDescriptionSupport);
  }

  /** A client names them in {@code initializationOptions.commands}; others would not know what to do. */
  private static Set<String> ownCommands(@Nullable Object options) {
    return options instanceof JsonObject object
            && object.get("commands") instanceof JsonArray commands
        ? StreamSupport.stream(commands.spliterator(), false)
            .filter(each -> each.isJsonPrimitive())
            .map(each -> each.getAsString())
            .collect(Collectors.toUnmodifiableSet())
        : Set.of();
  }

  private static <T> boolean says(Optional<T> capability, Function<T, @Nullable Boolean> flag) {
    return capability.map(flag).orElse(false);
  }

  private static boolean holds(Optional<List<String>> properties, String wanted) {
    return properties.filter(list -> list.contains(wanted)).isPresent();
  }
}
