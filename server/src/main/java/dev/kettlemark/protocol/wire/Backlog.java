package dev.kettlemark.protocol.wire;

import java.time.Duration;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Messages that have been read and wait for the server.
 *
 * <p>Calls run one after the other in the order of arrival. What the client answers to the server's own requests has a
 * second thread, so that a call may wait for an answer. What waits is bounded; a server that does not keep up for
 * {@link #PATIENCE} ends the connection.
 */
final class Backlog {

  /** Characters: a quarter of what a small heap holds; a longer message may pass when nothing else waits. */
  static final int CAPACITY = 16 << 20;

  /** How long the reader waits for a server that does not keep up. */
  static final Duration PATIENCE = Duration.ofSeconds(30);

  private static final Logger LOG = Logger.getLogger(Backlog.class.getName());

  private final ExecutorService calls = daemon("kettlemark-calls");
  private final ExecutorService answers = daemon("kettlemark-answers");
  private final Semaphore room = new Semaphore(CAPACITY, true);
  private final Consumer<String> onOverflow;

  Backlog(Consumer<String> onOverflow) {
    this.onOverflow = onOverflow;
  }

  /** Takes a call of the given number of characters. */
  void call(int size, Runnable work) {
    hand(calls, size, work);
  }

  /** Takes an answer of the given number of characters. */
  void answer(int size, Runnable work) {
    hand(answers, size, work);
  }

  /** Takes no more; says whether all calls have returned in time. */
  boolean close(Duration patience) throws InterruptedException {
    calls.shutdown();
    answers.shutdown();
    return calls.awaitTermination(patience.toMillis(), TimeUnit.MILLISECONDS);
  }

  private void hand(ExecutorService thread, int length, Runnable work) {
    int size = Math.min(length, CAPACITY);
    try {
      if (!room.tryAcquire(size, PATIENCE.toMillis(), TimeUnit.MILLISECONDS)) {
        onOverflow.accept("the server does not keep up");
        return;
      }
      thread.execute(() -> run(size, work));
    } catch (RejectedExecutionException tooLate) {
      LOG.fine("a message came after the end");
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      onOverflow.accept("the reader was stopped");
    }
  }

  private void run(int size, Runnable work) {
    try {
      work.run();
    } catch (Throwable failure) {
      LOG.log(Level.SEVERE, "bug: a message was lost", failure);
    } finally {
      room.release(size);
    }
  }

  private static ExecutorService daemon(String name) {
    return Executors.newSingleThreadExecutor(work -> {
      Thread thread = new Thread(work, name);
      thread.setDaemon(true);
      return thread;
    });
  }
}
