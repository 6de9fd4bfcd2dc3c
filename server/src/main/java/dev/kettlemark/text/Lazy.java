package dev.kettlemark.text;

import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A value that is made when it is first asked for, and once.
 *
 * <p>Safe for use by several threads; all but the first wait for it.
 *
 * @param <T> the value
 */
public final class Lazy<T> {

  private final Supplier<T> maker;
  private volatile @Nullable T value;

  private Lazy(Supplier<T> maker) {
    this.maker = maker;
  }

  public static <T> Lazy<T> of(Supplier<T> maker) {
    return new Lazy<>(maker);
  }

  /** A value that is there already. */
  public static <T> Lazy<T> known(T value) {
    Lazy<T> known = new Lazy<>(() -> value);
    known.value = value;
    return known;
  }

  /** Lets go of the value; it is made again when it is asked for. */
  public void forget() {
    value = null;
  }

  /** The value, if it has been asked for. */
  public Optional<T> made() {
    return Optional.ofNullable(value);
  }

  public T get() {
    T made = value;
    if (made == null) {
      synchronized (this) {
        made = value;
        if (made == null) {
          made = maker.get();
          value = made;
        }
      }
    }
    return made;
  }
}
