package dev.kettlemark.library;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The result of a task on the material that a name means; compares itself as {@link ResultOf} does.
 *
 * @param <T> the result
 */
final class ResultNamed<T> implements Question<Optional<T>> {

  private final Task<Optional<T>> task;
  private final String name;

  ResultNamed(Task<Optional<T>> task, String name) {
    this.task = task;
    this.name = name;
  }

  @Override
  public Optional<T> ask(Snapshot snapshot) {
    return snapshot.find(Kind.MATERIAL, name).flatMap(entry -> snapshot.result(task, entry));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ResultNamed<?> that && task.equals(that.task) && name.equals(that.name);
  }

  @Override
  public int hashCode() {
    return 31 * task.hashCode() + name.hashCode();
  }
}
