package dev.kettlemark.library;

import org.jspecify.annotations.Nullable;

/**
 * A question that asks one sort of thing by one word; compares itself as {@link ResultOf} does.
 *
 * @param <K> by what it asks
 * @param <T> what it is answered with
 */
abstract class LookedUp<K, T> implements Question<T> {

  private final K key;

  LookedUp(K key) {
    this.key = key;
  }

  /** By what it asks. */
  final K key() {
    return key;
  }

  @Override
  @SuppressWarnings("EqualsGetClass") // Each class asks something else; none has subclasses.
  public final boolean equals(@Nullable Object other) {
    return other != null
        && getClass() == other.getClass()
        && key.equals(((LookedUp<?, ?>) other).key);
  }

  @Override
  public final int hashCode() {
    return 31 * getClass().hashCode() + key.hashCode();
  }
}
