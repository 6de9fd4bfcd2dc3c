package dev.kettlemark.protocol;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.text.Lazy;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * One library as a client sees it at one moment.
 *
 * @param library the texts
 * @param results the library with its results; of a moment for which nobody asks there are none
 * @param open the buffers that editors hold, by the library's spelling of their URI
 * @param spelling how the client spells a file that no editor holds
 */
record Moment(
    Library library,
    Lazy<Snapshot> results,
    Map<String, OpenBuffer> open,
    UnaryOperator<String> spelling) {

  /**
   * A buffer that an editor holds.
   *
   * @param uri as the client spells it
   * @param version as the client counts
   */
  record OpenBuffer(String uri, int version) {}

  Moment {
    open = Map.copyOf(open);
  }

  Snapshot snapshot() {
    return results.get();
  }

  Optional<Document> document(String key) {
    return library.document(key);
  }

  /** How the client spells a document of the library. */
  String clientUri(String key) {
    OpenBuffer buffer = open.get(key);
    return buffer == null ? spelling.apply(key) : buffer.uri();
  }
}
