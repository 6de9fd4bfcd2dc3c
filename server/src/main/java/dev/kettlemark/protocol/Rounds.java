package dev.kettlemark.protocol;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/**
 * Rounds over the documents of a library, on a worker, after each change.
 *
 * <p>There is no fixed delay. Several rounds asked for at once are one, and of one library there are never
 * two at a time; a round that is overtaken by a further change may end early, since another one follows.
 *
 * @param <S> what is remembered of a library from round to round
 */
final class Rounds<S> {

  private final Executor worker;
  private final Supplier<S> fresh;
  private final Round<S> round;
  private final Map<LiveLibrary, Room<S>> rooms = new ConcurrentHashMap<>();

  /** What a round does. */
  interface Round<S> {

    /**
     * Looks at a library.
     *
     * @param state what is remembered of it; nobody else touches it meanwhile
     * @param overtaken whether a further round has been asked for
     */
    void run(LiveLibrary library, S state, BooleanSupplier overtaken);
  }

  private record Room<S>(AtomicBoolean asked, S state) {}

  Rounds(Executor worker, Supplier<S> fresh, Round<S> round) {
    this.worker = worker;
    this.fresh = fresh;
    this.round = round;
  }

  void ask(LiveLibrary library) {
    Room<S> room =
        rooms.computeIfAbsent(library, key -> new Room<>(new AtomicBoolean(), fresh.get()));
    if (room.asked().compareAndSet(false, true)) {
      worker.execute(() -> run(library, room));
    }
  }

  private void run(LiveLibrary library, Room<S> room) {
    synchronized (room) {
      room.asked().set(false);
      round.run(library, room.state(), room.asked()::get);
    }
  }
}
