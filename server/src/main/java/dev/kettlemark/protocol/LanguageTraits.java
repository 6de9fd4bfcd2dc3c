package dev.kettlemark.protocol;

import java.util.Optional;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CompletionCapabilities;
import org.eclipse.lsp4j.CompletionItemCapabilities;
import org.eclipse.lsp4j.CompletionItemTag;
import org.eclipse.lsp4j.CompletionListCapabilities;
import org.eclipse.lsp4j.FoldingRangeCapabilities;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.ParameterInformationCapabilities;
import org.eclipse.lsp4j.SignatureInformationCapabilities;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;

/**
 * What a client said it can do with the features that speak the language.
 *
 * @param colours whether it asks for semantic tokens
 * @param readsLinks whether a definition may say from which word it starts
 * @param readsHierarchies whether it shows what takes what
 * @param readsLineages whether it shows what is a variant of what
 * @param foldsLinesOnly whether it folds whole lines only
 * @param mostFolds how many folds it can show
 * @param formatsRanges whether it formats several ranges at once
 * @param readsLabelOffsets whether parameters of a signature may be given by their place in it
 * @param completion what it can do with offers
 */
record LanguageTraits(
    boolean colours,
    boolean readsLinks,
    boolean readsHierarchies,
    boolean readsLineages,
    boolean foldsLinesOnly,
    int mostFolds,
    boolean formatsRanges,
    boolean readsLabelOffsets,
    CompletionTraits completion) {

  /**
   * What a client can do with offers.
   *
   * @param resolves whether it asks for the documentation of the one offer that it shows
   * @param sharesRange whether all offers may share one range
   * @param sharesData whether all offers may share what they are remembered by
   * @param replaces whether an offer may both insert and replace
   * @param readsLabelDetails whether it shows details beside a label
   * @param readsTags whether it strikes out what is deprecated
   * @param preselects whether one offer may be chosen from the start
   */
  record CompletionTraits(
      boolean resolves,
      boolean sharesRange,
      boolean sharesData,
      boolean replaces,
      boolean readsLabelDetails,
      boolean readsTags,
      boolean preselects) {

    static CompletionTraits of(Optional<CompletionCapabilities> completion) {
      Optional<CompletionItemCapabilities> item =
          completion.map(CompletionCapabilities::getCompletionItem);
      return new CompletionTraits(
          item.map(CompletionItemCapabilities::getResolveSupport)
              .map(resolve -> resolve.getProperties())
              .filter(properties -> properties.contains("documentation"))
              .isPresent(),
          shares(completion, "editRange"),
          shares(completion, "data"),
          item.map(CompletionItemCapabilities::getInsertReplaceSupport).orElse(false),
          item.map(CompletionItemCapabilities::getLabelDetailsSupport).orElse(false),
          item.map(CompletionItemCapabilities::getTagSupport)
              .map(tags -> tags.getValueSet())
              .filter(tags -> tags.contains(CompletionItemTag.Deprecated))
              .isPresent(),
          item.map(CompletionItemCapabilities::getPreselectSupport).orElse(false));
    }

    private static boolean shares(Optional<CompletionCapabilities> completion, String what) {
      return completion
          .map(CompletionCapabilities::getCompletionList)
          .map(CompletionListCapabilities::getItemDefaults)
          .filter(defaults -> defaults.contains(what))
          .isPresent();
    }
  }

  static LanguageTraits of(InitializeParams params) {
    Optional<ClientCapabilities> client = Optional.ofNullable(params.getCapabilities());
    Optional<TextDocumentClientCapabilities> text = client.map(ClientCapabilities::getTextDocument);
    Optional<FoldingRangeCapabilities> folding =
        text.map(TextDocumentClientCapabilities::getFoldingRange);
    return new LanguageTraits(
        text.map(TextDocumentClientCapabilities::getSemanticTokens).isPresent(),
        text.map(TextDocumentClientCapabilities::getDefinition)
            .map(definition -> definition.getLinkSupport())
            .orElse(false),
        text.map(TextDocumentClientCapabilities::getCallHierarchy).isPresent(),
        text.map(TextDocumentClientCapabilities::getTypeHierarchy).isPresent(),
        folding.map(FoldingRangeCapabilities::getLineFoldingOnly).orElse(false),
        folding.map(FoldingRangeCapabilities::getRangeLimit).orElse(Integer.MAX_VALUE),
        text.map(TextDocumentClientCapabilities::getRangeFormatting)
            .map(formatting -> formatting.getRangesSupport())
            .orElse(false),
        text.map(TextDocumentClientCapabilities::getSignatureHelp)
            .map(help -> help.getSignatureInformation())
            .map(SignatureInformationCapabilities::getParameterInformation)
            .map(ParameterInformationCapabilities::getLabelOffsetSupport)
            .orElse(false),
        CompletionTraits.of(text.map(TextDocumentClientCapabilities::getCompletion)));
  }
}
