package dev.kettlemark.protocol;

import dev.kettlemark.library.Document;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.jspecify.annotations.Nullable;

/**
 * Sends diagnostics after each change, open buffers first.
 *
 * <p>There is no fixed delay: a change that comes while an older state is being checked starts the
 * round anew, so a burst of keys costs little more than its last one. What is sent always belongs to
 * the version it names, and what did not change is not sent again.
 */
final class Publisher implements Announcer {

  private final DiagnosticAdapter adapter;
  private final Consumer<PublishDiagnosticsParams> client;

  /** What the client was told last of each document of a library. */
  private final Rounds<Map<String, Told>> rounds;

  /** Diagnostics under the URI and version they were sent with. */
  private record Told(String uri, int version, List<Diagnostic> diagnostics) {

    boolean isLike(@Nullable Told other) {
      return other != null
          && version == other.version
          && uri.equals(other.uri)
          && diagnostics.equals(other.diagnostics);
    }
  }

  private static final int NO_VERSION = -1;

  Publisher(Executor worker, DiagnosticAdapter adapter, Consumer<PublishDiagnosticsParams> client) {
    this.adapter = adapter;
    this.client = client;
    this.rounds = new Rounds<>(worker, HashMap::new, this::round);
  }

  @Override
  public void changed(LiveLibrary library) {
    rounds.ask(library);
  }

  private void round(LiveLibrary library, Map<String, Told> told, BooleanSupplier overtaken) {
    Moment moment = library.moment();
    Set<String> present = new HashSet<>();
    for (Document document : openFirst(moment)) {
      if (overtaken.getAsBoolean()) {
        return;
      }
      present.add(document.uri());
      publish(told, moment, document);
    }
    withdrawGone(told, present);
  }

  private static List<Document> openFirst(Moment moment) {
    List<Document> documents = new ArrayList<>();
    List<Document> closed = new ArrayList<>();
    for (Document document : moment.library().ownDocuments()) {
      (moment.open().containsKey(document.uri()) ? documents : closed).add(document);
    }
    documents.addAll(closed);
    return documents;
  }

  private void publish(Map<String, Told> last, Moment moment, Document document) {
    Moment.OpenBuffer buffer = moment.open().get(document.uri());
    Told now = new Told(
        moment.clientUri(document.uri()),
        buffer == null ? NO_VERSION : buffer.version(),
        adapter.diagnostics(moment, document, Work.unwatched()));
    Told before = last.put(document.uri(), now);
    if (before != null && !before.uri().equals(now.uri())) {
      send(new Told(before.uri(), NO_VERSION, List.of()));
    }
    boolean nothingToSay = before == null && buffer == null && now.diagnostics().isEmpty();
    if (!now.isLike(before) && !nothingToSay) {
      send(now);
    }
  }

  private void withdrawGone(Map<String, Told> last, Set<String> present) {
    List<String> gone =
        last.keySet().stream().filter(key -> !present.contains(key)).toList();
    for (String key : gone) {
      Told told = last.remove(key);
      if (told != null) {
        send(new Told(told.uri(), NO_VERSION, List.of()));
      }
    }
  }

  private void send(Told told) {
    client.accept(
        told.version() == NO_VERSION
            ? new PublishDiagnosticsParams(told.uri(), told.diagnostics())
            : new PublishDiagnosticsParams(told.uri(), told.diagnostics(), told.version()));
  }
}
