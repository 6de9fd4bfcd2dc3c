package dev.kettlemark.protocol;

import dev.kettlemark.features.TokenModifier;
import dev.kettlemark.features.TokenType;
import java.util.List;
import org.eclipse.lsp4j.CompletionOptions;
import org.eclipse.lsp4j.DocumentLinkOptions;
import org.eclipse.lsp4j.DocumentOnTypeFormattingOptions;
import org.eclipse.lsp4j.DocumentRangeFormattingOptions;
import org.eclipse.lsp4j.SemanticTokensLegend;
import org.eclipse.lsp4j.SemanticTokensServerFull;
import org.eclipse.lsp4j.SemanticTokensWithRegistrationOptions;
import org.eclipse.lsp4j.ServerCapabilities;
import org.eclipse.lsp4j.SignatureHelpOptions;

/** What the server offers of the features that speak the language. */
final class LanguageCapabilities {

  private LanguageCapabilities() {}

  static void addTo(ServerCapabilities offered, LanguageTraits client) {
    if (client.colours()) {
      offered.setSemanticTokensProvider(new SemanticTokensWithRegistrationOptions(
          new SemanticTokensLegend(
              TokenType.LEGEND.stream().map(TokenType::word).toList(),
              TokenModifier.LEGEND.stream().map(TokenModifier::word).toList()),
          new SemanticTokensServerFull(true),
          true));
    }
    offered.setSignatureHelpProvider(new SignatureHelpOptions(List.of(" "), List.of(",")));
    offered.setDocumentOnTypeFormattingProvider(new DocumentOnTypeFormattingOptions("\n"));
    offered.setDocumentLinkProvider(new DocumentLinkOptions(false));
    offered.setImplementationProvider(true);
    if (client.formatsRanges()) {
      DocumentRangeFormattingOptions ranges = new DocumentRangeFormattingOptions();
      ranges.setRangesSupport(true);
      offered.setDocumentRangeFormattingProvider(ranges);
    }
    offered.setCompletionProvider(
        new CompletionOptions(client.completion().resolves(), List.of(" ")));
    if (client.readsHierarchies()) {
      offered.setCallHierarchyProvider(true);
    }
    if (client.readsLineages()) {
      offered.setTypeHierarchyProvider(true);
    }
  }
}
