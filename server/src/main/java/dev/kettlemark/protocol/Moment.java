package dev.kettlemark.protocol;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Snapshot;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * One library as a client sees it at one moment.
 *
 * @param snapshot the library with its results
 * @param open the buffers that editors hold, by the library's spelling of their URI
 * @param spelling how the client spells a file that no editor holds
 */
record Moment(Snapshot snapshot, Map<String, OpenBuffer> open, UnaryOperator<String> spelling) {

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

  Optional<Document> document(String key) {
    return snapshot.library().document(key);
  }

  /** How the client spells a document of the library. */
  String clientUri(String key) {
    OpenBuffer buffer = open.get(key);
    return buffer == null ? spelling.apply(key) : buffer.uri();
  }
}
