package dev.kettlemark.protocol;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.lsp4j.jsonrpc.CancelChecker;

/**
 * A piece of work while it is done: it can be stopped from outside, and it tells how far it is.
 *
 * <p>Whoever works asks {@link #check} or {@link #step} at least once for each document.
 */
final class Work {

  private final CancelChecker request;
  private final Optional<Progress> progress;
  private final AtomicBoolean stopped;

  /**
   * Work that a request waits for.
   *
   * @param stopped is set from outside when the user wants to wait no longer
   */
  Work(CancelChecker request, Optional<Progress> progress, AtomicBoolean stopped) {
    this.request = request;
    this.progress = progress;
    this.stopped = stopped;
  }

  /** Work that nobody waits for and nobody stops. */
  static Work unwatched() {
    return new Work(() -> {}, Optional.empty(), new AtomicBoolean());
  }

  /**
   * Ends here if the client no longer wants the answer.
   *
   * @throws CancellationException which the wire answers with {@code RequestCancelled}
   */
  void check() {
    request.checkCanceled();
    if (stopped.get()) {
      throw new CancellationException("stopped by the user");
    }
  }

  /** Some of all steps are done. */
  void step(int done, int all) {
    check();
    progress.ifPresent(told -> told.report(done, all));
  }

  /**
   * Does something for each item in turn, and hands results out as they come where somebody takes parts.
   *
   * @param parts takes what was found so far, which is then no longer part of the answer
   */
  <T, R> List<R> forEach(
      List<T> items, Function<T, List<R>> each, Optional<Consumer<List<R>>> parts) {
    PartialResults<R> results = new PartialResults<>(parts);
    for (int i = 0; i < items.size(); i++) {
      step(i, items.size());
      results.add(each.apply(items.get(i)));
    }
    step(items.size(), items.size());
    return results.rest();
  }
}
