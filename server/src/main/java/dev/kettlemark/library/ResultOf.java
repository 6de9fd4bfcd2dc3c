package dev.kettlemark.library;

/**
 * The result of a task on a section.
 *
 * @param <T> the result
 */
record ResultOf<T>(Task<T> task, Entry entry) implements Question<T> {

  @Override
  public T ask(Snapshot snapshot) {
    return snapshot.result(task, entry);
  }
}
