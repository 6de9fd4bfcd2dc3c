package dev.kettlemark.library;

/**
 * A computation over one section.
 *
 * <p>It is a pure function of the entry's section and of the answers to what it asks. Two equal tasks
 * give equal results, so tasks are enum constants or records.
 *
 * @param <T> the result
 */
public interface Task<T> {

  T compute(Entry entry, Scope scope);

  /** Whether the result is small and asked for again and again, so that it outlives a closed document's others. */
  default boolean isLasting() {
    return false;
  }

  /** A task whose results last. */
  static <T> Task<T> lasting(Task<T> task) {
    return new Lasting<>(task);
  }

  /** A task of which {@link #isLasting} holds; each stands for itself. */
  final class Lasting<T> implements Task<T> {

    private final Task<T> task;

    private Lasting(Task<T> task) {
      this.task = task;
    }

    @Override
    public T compute(Entry entry, Scope scope) {
      return task.compute(entry, scope);
    }

    @Override
    public boolean isLasting() {
      return true;
    }
  }
}
