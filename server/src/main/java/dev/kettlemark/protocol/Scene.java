package dev.kettlemark.protocol;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Place;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.ResourceOperation;
import org.eclipse.lsp4j.SnippetTextEdit;
import org.eclipse.lsp4j.StringValue;
import org.eclipse.lsp4j.TextDocumentEdit;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/**
 * What a request looks at: one document at one moment, in one client's way of counting.
 *
 * @param moment the library at that moment
 * @param document the document the request speaks of
 * @param traits what the client can do
 */
record Scene(Moment moment, Document document, ClientTraits traits) {

  Snapshot snapshot() {
    return moment.snapshot();
  }

  Source source() {
    return document.text().source();
  }

  Positions positions() {
    return traits.positions();
  }

  int offset(Position position) {
    return positions().offset(source(), position);
  }

  Optional<Location> location(Place place) {
    return moment
        .document(place.uri())
        .map(target -> new Location(
            clientUri(target), positions().range(target.text().source(), place.span())));
  }

  /** How the client opens a document, a page of the pantry too. */
  private String clientUri(Document target) {
    return target.builtIn() && !moment.open().containsKey(target.uri())
        ? PantryPages.uri(target, traits.plumbing().window().contents())
        : moment.clientUri(target.uri());
  }

  List<Location> locations(List<Place> places) {
    return places.stream().flatMap(place -> location(place).stream()).toList();
  }

  List<org.eclipse.lsp4j.TextEdit> edits(List<TextEdit> edits) {
    return edits.stream().map(edit -> positions().edit(source(), edit)).toList();
  }

  /** Edits in several documents as the client wants them: with versions if it reads them. */
  WorkspaceEdit workspaceEdit(Map<String, List<TextEdit>> edits) {
    Map<String, List<org.eclipse.lsp4j.TextEdit>> changes = new HashMap<>();
    List<Either<TextDocumentEdit, ResourceOperation>> versioned = new ArrayList<>();
    edits.forEach((key, list) -> moment.document(key).ifPresent(target -> {
      List<org.eclipse.lsp4j.TextEdit> converted = list.stream()
          .map(edit -> positions().edit(target.text().source(), edit))
          .toList();
      changes.put(moment.clientUri(key), converted);
      versioned.add(Either.forLeft(versionedEdit(key, converted)));
    }));
    return traits.readsDocumentChanges()
        ? new WorkspaceEdit(versioned)
        : new WorkspaceEdit(changes);
  }

  /**
   * Edits of which one quoted word is left for the user to write.
   *
   * @param unfilled the word that stands for what is to be written
   */
  WorkspaceEdit snippetEdit(Map<String, List<TextEdit>> edits, String unfilled) {
    List<Either<TextDocumentEdit, ResourceOperation>> versioned = new ArrayList<>();
    edits.forEach((key, list) -> moment.document(key).ifPresent(target -> {
      TextDocumentEdit edit = versionedEdit(key, List.of());
      edit.setEdits(list.stream()
          .map(one ->
              Either.<org.eclipse.lsp4j.TextEdit, SnippetTextEdit>forRight(new SnippetTextEdit(
                  positions().range(target.text().source(), one.span()),
                  new StringValue("snippet", snippet(one.replacement(), unfilled)))))
          .toList());
      versioned.add(Either.forLeft(edit));
    }));
    return new WorkspaceEdit(versioned);
  }

  private static String snippet(String text, String unfilled) {
    return text.replaceAll("([\\\\$}])", "\\\\$1")
        .replace("\"" + unfilled + "\"", "\"${1:" + unfilled + "}\"");
  }

  private TextDocumentEdit versionedEdit(String key, List<org.eclipse.lsp4j.TextEdit> edits) {
    VersionedTextDocumentIdentifier identifier = new VersionedTextDocumentIdentifier();
    identifier.setUri(moment.clientUri(key));
    Moment.OpenBuffer buffer = moment.open().get(key);
    identifier.setVersion(buffer == null ? null : buffer.version());
    return new TextDocumentEdit(
        identifier,
        edits.stream()
            .map(edit -> Either.<org.eclipse.lsp4j.TextEdit, SnippetTextEdit>forLeft(edit))
            .toList());
  }
}
