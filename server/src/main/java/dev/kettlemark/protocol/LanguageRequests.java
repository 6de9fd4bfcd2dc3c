package dev.kettlemark.protocol;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.eclipse.lsp4j.CallHierarchyIncomingCall;
import org.eclipse.lsp4j.CallHierarchyIncomingCallsParams;
import org.eclipse.lsp4j.CallHierarchyItem;
import org.eclipse.lsp4j.CallHierarchyOutgoingCall;
import org.eclipse.lsp4j.CallHierarchyOutgoingCallsParams;
import org.eclipse.lsp4j.CallHierarchyPrepareParams;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.DocumentLink;
import org.eclipse.lsp4j.DocumentLinkParams;
import org.eclipse.lsp4j.DocumentOnTypeFormattingParams;
import org.eclipse.lsp4j.DocumentRangesFormattingParams;
import org.eclipse.lsp4j.ImplementationParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.LocationLink;
import org.eclipse.lsp4j.SemanticTokens;
import org.eclipse.lsp4j.SemanticTokensDelta;
import org.eclipse.lsp4j.SemanticTokensDeltaParams;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.eclipse.lsp4j.SemanticTokensRangeParams;
import org.eclipse.lsp4j.SignatureHelp;
import org.eclipse.lsp4j.SignatureHelpParams;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.TypeHierarchyItem;
import org.eclipse.lsp4j.TypeHierarchyPrepareParams;
import org.eclipse.lsp4j.TypeHierarchySubtypesParams;
import org.eclipse.lsp4j.TypeHierarchySupertypesParams;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.jspecify.annotations.Nullable;

/** The requests about one document that ask what its words mean. */
abstract class LanguageRequests implements TextDocumentService {

  private final ServerState state;
  private final TokenResults tokens = new TokenResults();

  LanguageRequests(ServerState state) {
    this.state = state;
  }

  @Override
  public CompletableFuture<SemanticTokens> semanticTokensFull(SemanticTokensParams params) {
    return state.answer(
        params.getTextDocument(),
        new SemanticTokens(List.of()),
        scene -> SemanticTokensAdapter.full(scene, params.getTextDocument().getUri(), tokens));
  }

  @Override
  public CompletableFuture<Either<SemanticTokens, SemanticTokensDelta>> semanticTokensFullDelta(
      SemanticTokensDeltaParams params) {
    return state.answer(
        params.getTextDocument(),
        Either.forLeft(new SemanticTokens(List.of())),
        scene -> SemanticTokensAdapter.delta(
            scene, params.getTextDocument().getUri(), params.getPreviousResultId(), tokens));
  }

  @Override
  public CompletableFuture<SemanticTokens> semanticTokensRange(SemanticTokensRangeParams params) {
    return state.answer(
        params.getTextDocument(),
        new SemanticTokens(List.of()),
        scene -> SemanticTokensAdapter.range(scene, params.getRange()));
  }

  @Override
  public CompletableFuture<@Nullable SignatureHelp> signatureHelp(SignatureHelpParams params) {
    return state.answerIfAny(
        params.getTextDocument(), scene -> SignatureAdapter.help(scene, params.getPosition()));
  }

  @Override
  public CompletableFuture<List<? extends TextEdit>> onTypeFormatting(
      DocumentOnTypeFormattingParams params) {
    return state.answer(
        params.getTextDocument(),
        List.of(),
        scene -> FormatAdapter.typed(scene, params.getPosition()));
  }

  @Override
  public CompletableFuture<List<? extends TextEdit>> rangesFormatting(
      DocumentRangesFormattingParams params) {
    return state.answer(
        params.getTextDocument(),
        List.of(),
        scene -> FormatAdapter.ranges(scene, params.getRanges()));
  }

  @Override
  public CompletableFuture<List<DocumentLink>> documentLink(DocumentLinkParams params) {
    return state.answer(params.getTextDocument(), List.of(), LinkAdapter::links);
  }

  @Override
  public CompletableFuture<Either<List<? extends Location>, List<? extends LocationLink>>>
      implementation(ImplementationParams params) {
    return state.answer(
        params.getTextDocument(),
        Either.forLeft(List.of()),
        scene -> NavigationAdapter.implementation(scene, params.getPosition()));
  }

  @Override
  public CompletableFuture<List<CallHierarchyItem>> prepareCallHierarchy(
      CallHierarchyPrepareParams params) {
    return state.answer(
        params.getTextDocument(),
        List.of(),
        scene -> HierarchyAdapter.calls(scene, params.getPosition()));
  }

  @Override
  public CompletableFuture<List<CallHierarchyIncomingCall>> callHierarchyIncomingCalls(
      CallHierarchyIncomingCallsParams params) {
    CallHierarchyItem item = params.getItem();
    return state.answer(
        HierarchyAdapter.origin(item.getData(), item.getUri()),
        List.of(),
        scene -> HierarchyAdapter.incoming(scene, item.getData()));
  }

  @Override
  public CompletableFuture<List<CallHierarchyOutgoingCall>> callHierarchyOutgoingCalls(
      CallHierarchyOutgoingCallsParams params) {
    CallHierarchyItem item = params.getItem();
    return state.answer(
        HierarchyAdapter.origin(item.getData(), item.getUri()),
        List.of(),
        scene -> HierarchyAdapter.outgoing(scene, item.getData()));
  }

  @Override
  public CompletableFuture<List<TypeHierarchyItem>> prepareTypeHierarchy(
      TypeHierarchyPrepareParams params) {
    return state.answer(
        params.getTextDocument(),
        List.of(),
        scene -> HierarchyAdapter.types(scene, params.getPosition()));
  }

  @Override
  public CompletableFuture<List<TypeHierarchyItem>> typeHierarchySupertypes(
      TypeHierarchySupertypesParams params) {
    TypeHierarchyItem item = params.getItem();
    return state.answer(
        HierarchyAdapter.origin(item.getData(), item.getUri()),
        List.of(),
        scene -> HierarchyAdapter.parents(scene, item.getData()));
  }

  @Override
  public CompletableFuture<List<TypeHierarchyItem>> typeHierarchySubtypes(
      TypeHierarchySubtypesParams params) {
    TypeHierarchyItem item = params.getItem();
    return state.answer(
        HierarchyAdapter.origin(item.getData(), item.getUri()),
        List.of(),
        scene -> HierarchyAdapter.variants(scene, item.getData()));
  }

  @Override
  public CompletableFuture<CompletionItem> resolveCompletionItem(CompletionItem item) {
    return state.answer(
        CompletionAdapter.origin(item), item, scene -> CompletionAdapter.resolved(scene, item));
  }
}
