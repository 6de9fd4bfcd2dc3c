package dev.kettlemark.protocol;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CodeLens;
import org.eclipse.lsp4j.CodeLensParams;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionList;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.DidSaveTextDocumentParams;
import org.eclipse.lsp4j.DocumentDiagnosticParams;
import org.eclipse.lsp4j.DocumentDiagnosticReport;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentHighlight;
import org.eclipse.lsp4j.DocumentHighlightParams;
import org.eclipse.lsp4j.DocumentRangeFormattingParams;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.FoldingRange;
import org.eclipse.lsp4j.FoldingRangeRequestParams;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.LocationLink;
import org.eclipse.lsp4j.PrepareRenameDefaultBehavior;
import org.eclipse.lsp4j.PrepareRenameParams;
import org.eclipse.lsp4j.PrepareRenameResult;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.RelatedFullDocumentDiagnosticReport;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.SelectionRange;
import org.eclipse.lsp4j.SelectionRangeParams;
import org.eclipse.lsp4j.SymbolInformation;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.jsonrpc.messages.Either3;
import org.jspecify.annotations.Nullable;

/** The requests about one document: each converts, asks one feature, and converts back. */
@SuppressWarnings(
    "deprecation") // The interface still names the older symbol type in its signature.
final class DocumentService extends LanguageRequests {

  private final ServerState state;
  private final ToldSymbols symbols = new ToldSymbols();

  DocumentService(ServerState state) {
    super(state);
    this.state = state;
  }

  @Override
  public void didOpen(DidOpenTextDocumentParams params) {
    state.open(params.getTextDocument());
  }

  @Override
  public void didChange(DidChangeTextDocumentParams params) {
    state.change(params.getTextDocument(), params.getContentChanges());
  }

  @Override
  public void didClose(DidCloseTextDocumentParams params) {
    state.close(params.getTextDocument());
  }

  @Override
  public void didSave(DidSaveTextDocumentParams params) {
    // The buffer is already known; the file on the disk comes as a watched change.
  }

  @Override
  public CompletableFuture<@Nullable Hover> hover(HoverParams params) {
    return state.answerIfAny(
        params.getTextDocument(), scene -> HoverAdapter.hover(scene, params.getPosition()));
  }

  @Override
  public CompletableFuture<List<InlayHint>> inlayHint(InlayHintParams params) {
    Settings settings = state.settings(params.getTextDocument().getUri());
    return state.answer(
        params.getTextDocument(),
        List.of(),
        scene -> InlayHintAdapter.hints(scene, params.getRange(), settings));
  }

  @Override
  public CompletableFuture<List<? extends CodeLens>> codeLens(CodeLensParams params) {
    Settings settings = state.settings(params.getTextDocument().getUri());
    return state.answer(
        params.getTextDocument(), List.of(), scene -> LensAdapter.lenses(scene, settings));
  }

  @Override
  public CompletableFuture<List<Either<Command, CodeAction>>> codeAction(CodeActionParams params) {
    return state.answer(
        params.getTextDocument(), List.of(), scene -> ActionForms.of(scene, params));
  }

  // Findings on request, and what was left out of an answer.

  @Override
  public CompletableFuture<DocumentDiagnosticReport> diagnostic(DocumentDiagnosticParams params) {
    Optional<Scene> scene = state.scene(params.getTextDocument().getUri());
    boolean related = state.traits().plumbing().pulls().related();
    return state
        .works()
        .start(
            params,
            "Checking",
            work -> scene
                .map(s -> state.pull().document(s, params.getPreviousResultId(), related, work))
                .orElseGet(() -> new DocumentDiagnosticReport(
                    new RelatedFullDocumentDiagnosticReport(List.of()))));
  }

  @Override
  public CompletableFuture<CodeAction> resolveCodeAction(CodeAction unresolved) {
    return Resolving.action(state, unresolved);
  }

  @Override
  public CompletableFuture<CodeLens> resolveCodeLens(CodeLens unresolved) {
    return Resolving.lens(state, unresolved);
  }

  @Override
  public CompletableFuture<InlayHint> resolveInlayHint(InlayHint unresolved) {
    return Resolving.hint(state, unresolved);
  }

  @Override
  public CompletableFuture<List<? extends TextEdit>> formatting(DocumentFormattingParams params) {
    return state.answer(params.getTextDocument(), List.of(), FormatAdapter::all);
  }

  @Override
  public CompletableFuture<List<? extends TextEdit>> rangeFormatting(
      DocumentRangeFormattingParams params) {
    return state.answer(
        params.getTextDocument(),
        List.of(),
        scene -> FormatAdapter.range(scene, params.getRange()));
  }

  @Override
  public CompletableFuture<List<Either<SymbolInformation, DocumentSymbol>>> documentSymbol(
      DocumentSymbolParams params) {
    return state.answer(params.getTextDocument(), List.of(), symbols::of);
  }

  @Override
  public CompletableFuture<List<FoldingRange>> foldingRange(FoldingRangeRequestParams params) {
    return state.answer(params.getTextDocument(), List.of(), OutlineAdapter::foldings);
  }

  @Override
  public CompletableFuture<Either<List<? extends Location>, List<? extends LocationLink>>>
      definition(DefinitionParams params) {
    return state.answer(
        params.getTextDocument(),
        Either.forLeft(List.of()),
        scene -> NavigationAdapter.definition(scene, params.getPosition()));
  }

  @Override
  public CompletableFuture<List<? extends Location>> references(ReferenceParams params) {
    Optional<Scene> scene = state.scene(params.getTextDocument().getUri());
    return state
        .works()
        .start(
            params,
            "Searching",
            work -> scene
                .map(
                    s -> NavigationAdapter.references(s, params, state.works().parts(params), work))
                .orElse(List.of()));
  }

  @Override
  public CompletableFuture<List<? extends DocumentHighlight>> documentHighlight(
      DocumentHighlightParams params) {
    return state.answer(
        params.getTextDocument(),
        List.of(),
        scene -> NavigationAdapter.highlights(scene, params.getPosition()));
  }

  @Override
  public CompletableFuture<
          @Nullable Either3<Range, PrepareRenameResult, PrepareRenameDefaultBehavior>>
      prepareRename(PrepareRenameParams params) {
    return state.answerIfAny(
        params.getTextDocument(),
        scene -> Optional.of(RenameAdapter.prepare(scene, params.getPosition())));
  }

  @Override
  public CompletableFuture<@Nullable WorkspaceEdit> rename(RenameParams params) {
    Optional<Scene> scene = state.scene(params.getTextDocument().getUri());
    return state
        .works()
        .start(
            params,
            "Renaming",
            work -> scene
                .map(s -> RenameAdapter.edits(s, params.getPosition(), params.getNewName(), work))
                .orElse(null));
  }

  @Override
  public CompletableFuture<List<SelectionRange>> selectionRange(SelectionRangeParams params) {
    return state.answer(
        params.getTextDocument(),
        List.of(),
        scene -> OutlineAdapter.selections(scene, params.getPositions()));
  }

  @Override
  public CompletableFuture<Either<List<CompletionItem>, CompletionList>> completion(
      CompletionParams params) {
    return state.answer(
        params.getTextDocument(),
        Either.forLeft(List.of()),
        scene -> Either.forRight(CompletionAdapter.items(scene, params.getPosition())));
  }
}
