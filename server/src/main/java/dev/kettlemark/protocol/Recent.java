package dev.kettlemark.protocol;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What is remembered of the documents that were asked for last; of others it is forgotten.
 *
 * <p>Safe for use by several threads.
 */
final class Recent<V> {

  private final int most;
  private final Map<String, V> values = new LinkedHashMap<>(16, 0.75f, true);

  /** @param most of how many documents */
  Recent(int most) {
    this.most = most;
  }

  synchronized Optional<V> of(String uri) {
    return Optional.ofNullable(values.get(uri));
  }

  synchronized void keep(String uri, V value) {
    values.put(uri, value);
    if (values.size() > most) {
      values.remove(values.keySet().iterator().next());
    }
  }
}
