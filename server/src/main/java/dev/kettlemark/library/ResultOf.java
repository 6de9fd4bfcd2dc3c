package dev.kettlemark.library;

import org.jspecify.annotations.Nullable;

/**
 * The result of a task on a section.
 *
 * <p>It is asked at every key, and first while a program starts. It compares itself, since what the Java machine makes
 * at run time of a record's comparison takes longer than most answers.
 *
 * @param <T> the result
 */
final class ResultOf<T> implements Question<T> {

  private final Task<T> task;
  private final Entry entry;

  ResultOf(Task<T> task, Entry entry) {
    this.task = task;
    this.entry = entry;
  }

  @Override
  public T ask(Snapshot snapshot) {
    return snapshot.result(task, entry);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ResultOf<?> that && task.equals(that.task) && entry.equals(that.entry);
  }

  @Override
  public int hashCode() {
    return 31 * task.hashCode() + entry.hashCode();
  }
}
