package dev.kettlemark.protocol;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.eclipse.lsp4j.SemanticTokens;
import org.eclipse.lsp4j.SemanticTokensDelta;
import org.eclipse.lsp4j.SemanticTokensDeltaParams;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.eclipse.lsp4j.SemanticTokensRangeParams;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.services.TextDocumentService;

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
}
