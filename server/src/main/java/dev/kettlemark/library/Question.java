package dev.kettlemark.library;

import java.util.Optional;

/**
 * Something that a computation asks of the library besides its own section.
 *
 * <p>Two equal questions have equal answers in one snapshot. Answers compare by {@code equals}; for
 * sections and computed results that is identity.
 *
 * @param <T> what it is answered with
 */
public interface Question<T> {

  T ask(Snapshot snapshot);

  /** The result of a task on a section. */
  static <T> Question<T> of(Task<T> task, Entry entry) {
    return new ResultOf<>(task, entry);
  }

  /** The result of a task on the material that a name means; empty where it means none. */
  static <T> Question<Optional<T>> named(Task<Optional<T>> task, String name) {
    return new ResultNamed<>(task, name);
  }
}
