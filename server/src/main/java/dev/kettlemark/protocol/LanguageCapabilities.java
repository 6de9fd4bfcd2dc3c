package dev.kettlemark.protocol;

import dev.kettlemark.features.TokenModifier;
import dev.kettlemark.features.TokenType;
import java.util.Arrays;
import org.eclipse.lsp4j.SemanticTokensLegend;
import org.eclipse.lsp4j.SemanticTokensServerFull;
import org.eclipse.lsp4j.SemanticTokensWithRegistrationOptions;
import org.eclipse.lsp4j.ServerCapabilities;

/** What the server offers of the features that speak the language. */
final class LanguageCapabilities {

  private LanguageCapabilities() {}

  static void addTo(ServerCapabilities offered, LanguageTraits client) {
    if (client.colours()) {
      offered.setSemanticTokensProvider(new SemanticTokensWithRegistrationOptions(
          new SemanticTokensLegend(
              Arrays.stream(TokenType.values()).map(TokenType::word).toList(),
              Arrays.stream(TokenModifier.values()).map(TokenModifier::word).toList()),
          new SemanticTokensServerFull(true),
          true));
    }
  }
}
