package dev.kettlemark.library;

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
}
