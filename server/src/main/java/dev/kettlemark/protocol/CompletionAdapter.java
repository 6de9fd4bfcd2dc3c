package dev.kettlemark.protocol;

import com.google.gson.JsonArray;
import dev.kettlemark.features.Completion;
import dev.kettlemark.features.Proposal;
import dev.kettlemark.text.Span;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionItemDefaults;
import org.eclipse.lsp4j.CompletionItemKind;
import org.eclipse.lsp4j.CompletionItemLabelDetails;
import org.eclipse.lsp4j.CompletionItemTag;
import org.eclipse.lsp4j.CompletionList;
import org.eclipse.lsp4j.InsertReplaceEdit;
import org.eclipse.lsp4j.InsertReplaceRange;
import org.eclipse.lsp4j.InsertTextFormat;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/** What may be written at a place, in the words that a client understands. */
final class CompletionAdapter {

  private CompletionAdapter() {}

  static CompletionList items(Scene scene, Position position) {
    int offset = scene.offset(position);
    List<Proposal> proposals = Completion.at(scene.snapshot(), scene.document(), offset).stream()
        .filter(proposal -> !proposal.isSnippet() || scene.traits().readsSnippets())
        .toList();
    List<CompletionItem> items = new ArrayList<>();
    for (Proposal proposal : proposals) {
      items.add(item(scene, proposal, offset));
    }
    CompletionList list = new CompletionList(false, items);
    if (!items.isEmpty()) {
      if (completion(scene).preselects()) {
        items.get(0).setPreselect(true);
      }
      defaults(scene, proposals.get(0), offset).ifPresent(list::setItemDefaults);
    }
    return list;
  }

  /** What all offers share: hundreds of them are made at one place. */
  private static Optional<CompletionItemDefaults> defaults(
      Scene scene, Proposal proposal, int offset) {
    boolean sharesRange = completion(scene).sharesRange();
    boolean sharesData = completion(scene).sharesData() && completion(scene).resolves();
    if (!sharesRange && !sharesData) {
      return Optional.empty();
    }
    CompletionItemDefaults defaults = new CompletionItemDefaults();
    if (sharesRange) {
      defaults.setEditRange(range(scene, proposal.replaced(), offset));
    }
    if (sharesData) {
      defaults.setData(data(scene, proposal));
    }
    return Optional.of(defaults);
  }

  /** Where an offer was made, by which it is made again. */
  private static JsonArray data(Scene scene, Proposal proposal) {
    Position start =
        scene.positions().position(scene.source(), proposal.replaced().start());
    JsonArray data = new JsonArray();
    data.add(scene.moment().clientUri(scene.document().uri()));
    data.add(start.getLine());
    data.add(start.getCharacter());
    return data;
  }

  /** The document that an offer was made for. */
  static TextDocumentIdentifier origin(CompletionItem item) {
    return new TextDocumentIdentifier(
        item.getData() instanceof JsonArray data && data.size() == 3
            ? data.get(0).getAsString()
            : "");
  }

  /** The offer with its documentation, if it is still made there. */
  static CompletionItem resolved(Scene scene, CompletionItem item) {
    if (item.getData() instanceof JsonArray data && data.size() == 3) {
      Position start = new Position(data.get(1).getAsInt(), data.get(2).getAsInt());
      Completion.at(scene.snapshot(), scene.document(), scene.offset(start)).stream()
          .filter(proposal -> proposal.label().equals(item.getLabel()))
          .findFirst()
          .flatMap(CompletionAdapter::documentation)
          .ifPresent(item::setDocumentation);
    }
    return item;
  }

  private static LanguageTraits.CompletionTraits completion(Scene scene) {
    return scene.traits().language().completion();
  }

  private static CompletionItem item(Scene scene, Proposal proposal, int offset) {
    CompletionItem item = new CompletionItem(proposal.label());
    item.setKind(kind(proposal.kind()));
    describe(scene, proposal, item);
    write(scene, proposal, offset, item);
    if (proposal.isSnippet()) {
      // Plain text is what the protocol takes an offer for that does not say.
      item.setInsertTextFormat(InsertTextFormat.Snippet);
    }
    item.setSortText(proposal.sortKey());
    filter(proposal.label()).ifPresent(item::setFilterText);
    if (proposal.isPast() && completion(scene).readsTags()) {
      item.setTags(List.of(CompletionItemTag.Deprecated));
    }
    return item;
  }

  private static void describe(Scene scene, Proposal proposal, CompletionItem item) {
    if (!proposal.detail().isEmpty()) {
      item.setDetail(proposal.detail());
      if (completion(scene).readsLabelDetails()) {
        CompletionItemLabelDetails details = new CompletionItemLabelDetails();
        details.setDescription(proposal.detail());
        item.setLabelDetails(details);
      }
    }
    if (!completion(scene).resolves()) {
      documentation(proposal).ifPresent(item::setDocumentation);
    } else if (!proposal.documentation().isEmpty() && !completion(scene).sharesData()) {
      item.setData(data(scene, proposal));
    }
  }

  private static Optional<MarkupContent> documentation(Proposal proposal) {
    return proposal.documentation().isEmpty()
        ? Optional.empty()
        : Optional.of(new MarkupContent(MarkupKind.MARKDOWN, proposal.documentation()));
  }

  private static void write(Scene scene, Proposal proposal, int offset, CompletionItem item) {
    if (completion(scene).sharesRange()) {
      if (!proposal.insertText().equals(proposal.label())) {
        item.setTextEditText(proposal.insertText());
      }
      return;
    }
    Either<Range, InsertReplaceRange> range = range(scene, proposal.replaced(), offset);
    item.setTextEdit(
        range.isLeft()
            ? Either.forLeft(new TextEdit(range.getLeft(), proposal.insertText()))
            : Either.forRight(new InsertReplaceEdit(
                proposal.insertText(),
                range.getRight().getInsert(),
                range.getRight().getReplace())));
  }

  /** The word under the cursor, and the part of it before the cursor for a client that tells them apart. */
  private static Either<Range, InsertReplaceRange> range(Scene scene, Span word, int offset) {
    Range whole = scene.positions().range(scene.source(), word);
    if (!completion(scene).replaces()) {
      return Either.forLeft(whole);
    }
    Span typed = new Span(word.start(), Math.max(word.start(), Math.min(offset, word.end())));
    return Either.forRight(
        new InsertReplaceRange(scene.positions().range(scene.source(), typed), whole));
  }

  /** A label with accents is also found by its letters alone. */
  private static Optional<String> filter(String label) {
    if (label.chars().allMatch(c -> c < 0x80)) {
      return Optional.empty();
    }
    String letters = Normalizer.normalize(label, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
    return letters.equals(label) ? Optional.empty() : Optional.of(label + " " + letters);
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
