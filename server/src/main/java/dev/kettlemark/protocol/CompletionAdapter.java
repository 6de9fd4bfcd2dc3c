package dev.kettlemark.protocol;

import dev.kettlemark.features.Completion;
import dev.kettlemark.features.Proposal;
import java.util.List;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionItemKind;
import org.eclipse.lsp4j.InsertTextFormat;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/** What may be written at a place. */
final class CompletionAdapter {

  private CompletionAdapter() {}

  static List<CompletionItem> items(Scene scene, Position position) {
    return Completion.at(scene.snapshot(), scene.document(), scene.offset(position)).stream()
        .filter(proposal -> !proposal.isSnippet() || scene.traits().readsSnippets())
        .map(proposal -> item(scene, proposal))
        .toList();
  }

  private static CompletionItem item(Scene scene, Proposal proposal) {
    CompletionItem item = new CompletionItem(proposal.label());
    item.setKind(kind(proposal.kind()));
    if (!proposal.detail().isEmpty()) {
      item.setDetail(proposal.detail());
    }
    if (!proposal.documentation().isEmpty()) {
      item.setDocumentation(
          Either.forRight(new MarkupContent(MarkupKind.MARKDOWN, proposal.documentation())));
    }
    item.setTextEdit(Either.forLeft(new TextEdit(
        scene.positions().range(scene.source(), proposal.replaced()), proposal.insertText())));
    item.setInsertTextFormat(
        proposal.isSnippet() ? InsertTextFormat.Snippet : InsertTextFormat.PlainText);
    item.setSortText(proposal.sortKey());
    return item;
  }

  private static CompletionItemKind kind(Proposal.Kind kind) {
    return switch (kind) {
      case INGREDIENT -> CompletionItemKind.Constant;
      case FORMULA -> CompletionItemKind.Class;
      case PRODUCT -> CompletionItemKind.Module;
      case HOUSE, TOOL -> CompletionItemKind.Field;
      case STAGE, BASIS -> CompletionItemKind.Variable;
      case VERB -> CompletionItemKind.Method;
      case FACT -> CompletionItemKind.Property;
      case STATE, WORD -> CompletionItemKind.EnumMember;
      case TEMPERATURE -> CompletionItemKind.Value;
      case UNIT -> CompletionItemKind.Unit;
      case CONNECTIVE -> CompletionItemKind.Keyword;
      case SKELETON -> CompletionItemKind.Snippet;
    };
  }
}
