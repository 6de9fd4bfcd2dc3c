package dev.kettlemark.quantity;

import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;

/** An answer, or the reason why there is none. */
public sealed interface Outcome<T> permits Outcome.Known, Outcome.Unknown {

  static <T> Outcome<T> known(T value) {
    return new Known<>(value);
  }

  /**
   * Returns the absence of an answer.
   *
   * @param because one plain clause in lower case, fit to follow "unknown: ", with places for the values that decided as
   *     in {@link String#format(Locale, String, Object...)}
   * @param values what decided
   */
  static <T> Outcome<T> unknown(Reason reason, String because, Object... values) {
    return new Unknown<>(reason, Remark.of(because, values));
  }

  /** Returns the absence of an answer for a reason that another answer was missing for. */
  static <T> Outcome<T> unknown(Reason reason, Remark why) {
    return new Unknown<>(reason, why);
  }

  /** Combines two answers; the first unknown one wins. */
  static <A, B, R> Outcome<R> both(
      Outcome<A> first, Outcome<B> second, BiFunction<? super A, ? super B, ? extends R> combine) {
    return first.flatMap(one -> second.map(other -> combine.apply(one, other)));
  }

  boolean isKnown();

  <R> Outcome<R> map(Function<? super T, ? extends R> function);

  <R> Outcome<R> flatMap(Function<? super T, Outcome<R>> function);

  /** Joins both cases in one result. */
  <R> R fold(
      Function<? super T, ? extends R> whenKnown, Function<Unknown<T>, ? extends R> whenUnknown);

  default T orElse(T fallback) {
    return fold(value -> value, unknown -> fallback);
  }

  default Optional<T> toOptional() {
    return fold(Optional::of, unknown -> Optional.empty());
  }

  default void ifKnown(Consumer<? super T> consumer) {
    toOptional().ifPresent(consumer);
  }

  /**
   * An answer.
   *
   * @param value the answer itself
   */
  record Known<T>(T value) implements Outcome<T> {

    @Override
    public boolean isKnown() {
      return true;
    }

    @Override
    public <R> Outcome<R> map(Function<? super T, ? extends R> function) {
      return new Known<>(function.apply(value));
    }

    @Override
    public <R> Outcome<R> flatMap(Function<? super T, Outcome<R>> function) {
      return function.apply(value);
    }

    @Override
    public <R> R fold(
        Function<? super T, ? extends R> whenKnown, Function<Unknown<T>, ? extends R> whenUnknown) {
      return whenKnown.apply(value);
    }
  }

  /**
   * No answer.
   *
   * @param reason the kind of obstacle
   * @param why one plain clause in lower case with the values that decided
   */
  record Unknown<T>(Reason reason, Remark why) implements Outcome<T> {

    /** Why, in English: one plain clause in lower case with the values that decided. */
    public String because() {
      return why.english();
    }

    @Override
    public boolean isKnown() {
      return false;
    }

    @Override
    public <R> Outcome<R> map(Function<? super T, ? extends R> function) {
      return retyped();
    }

    @Override
    public <R> Outcome<R> flatMap(Function<? super T, Outcome<R>> function) {
      return retyped();
    }

    @Override
    public <R> R fold(
        Function<? super T, ? extends R> whenKnown, Function<Unknown<T>, ? extends R> whenUnknown) {
      return whenUnknown.apply(this);
    }

    /** Returns the same absence as an answer to another question. */
    public <R> Outcome<R> retyped() {
      return new Unknown<>(reason, why);
    }
  }
}
