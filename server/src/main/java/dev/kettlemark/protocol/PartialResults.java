package dev.kettlemark.protocol;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Results that are handed out in parts where the client takes parts, and all at once elsewhere.
 *
 * <p>Language Server Protocol 3.17, "Partial Result Progress": whatever was sent in parts must not come
 * again in the answer.
 */
final class PartialResults<T> {

  /** A message for each result would cost more than the result. */
  static final int PART = 64;

  private final Optional<Consumer<List<T>>> parts;
  private List<T> kept = new ArrayList<>();

  PartialResults(Optional<Consumer<List<T>>> parts) {
    this.parts = parts;
  }

  void add(List<T> found) {
    kept.addAll(found);
    if (kept.size() >= PART) {
      handOut();
    }
  }

  /** What the answer holds: nothing where all was handed out. */
  List<T> rest() {
    if (!kept.isEmpty()) {
      handOut();
    }
    return List.copyOf(kept);
  }

  private void handOut() {
    parts.ifPresent(taker -> {
      taker.accept(List.copyOf(kept));
      kept = new ArrayList<>();
    });
  }
}
