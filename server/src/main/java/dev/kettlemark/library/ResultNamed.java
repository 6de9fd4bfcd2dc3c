package dev.kettlemark.library;

import java.util.Optional;

/**
 * The result of a task on the material that a name means.
 *
 * @param <T> the result
 */
record ResultNamed<T>(Task<Optional<T>> task, String name) implements Question<Optional<T>> {

  @Override
  public Optional<T> ask(Snapshot snapshot) {
    return snapshot.find(Kind.MATERIAL, name).flatMap(entry -> snapshot.result(task, entry));
  }
}
