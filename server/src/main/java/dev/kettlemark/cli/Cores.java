package dev.kettlemark.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;

/**
 * The processors that a command shares its work among.
 *
 * <p>However many there are, what comes out is the same and in the same order.
 *
 * @param count how many work at a time, from 1
 */
record Cores(int count) {

  Cores {
    if (count < 1) {
      throw new IllegalArgumentException("nobody works with " + count + " processors");
    }
  }

  /** All that this process may use. */
  static Cores all() {
    return new Cores(Runtime.getRuntime().availableProcessors());
  }

  /**
   * Does the same to each of several things, and hands out what comes of it in their order.
   *
   * @param work waits for nobody else's work, and prints nothing
   */
  <T, R> List<R> map(Collection<T> things, Function<T, R> work) {
    int workers = Math.min(count, things.size());
    if (workers < 2) {
      return things.stream().map(work).toList();
    }
    ExecutorService pool = Executors.newFixedThreadPool(workers);
    try {
      List<Callable<R>> all = new ArrayList<>(things.size());
      things.forEach(thing -> all.add(() -> work.apply(thing)));
      List<R> results = new ArrayList<>(things.size());
      for (Future<R> one : pool.invokeAll(all)) {
        results.add(one.get());
      }
      return List.copyOf(results);
    } catch (ExecutionException broken) {
      throw asThrown(broken);
    } catch (InterruptedException asked) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the work was broken off", asked);
    } finally {
      pool.shutdownNow();
    }
  }

  /** What broke the work, as it would have come out of a single thread. */
  private static RuntimeException asThrown(ExecutionException broken) {
    Throwable cause = broken.getCause();
    if (cause instanceof Error fault) {
      throw fault;
    }
    return cause instanceof RuntimeException fault ? fault : new IllegalStateException(broken);
  }
}
