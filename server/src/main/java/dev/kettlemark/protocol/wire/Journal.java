package dev.kettlemark.protocol.wire;

import java.io.PrintStream;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;

/**
 * Writes the log from a thread of its own and drops records rather than wait.
 *
 * <p>Many clients never read the error stream of their server. Once that pipe is full, a thread that logs in the usual
 * way stops for ever.
 */
public final class Journal extends Handler {

  private static final int CAPACITY = 500;
  private static final long PATIENCE_MILLIS = 200;

  private final PrintStream out;
  private final BlockingQueue<LogRecord> records = new ArrayBlockingQueue<>(CAPACITY);
  private final AtomicLong dropped = new AtomicLong();
  private final AtomicLong unwritten = new AtomicLong();

  private Journal(PrintStream out) {
    this.out = out;
    setFormatter(new SimpleFormatter());
  }

  /** Makes this the only log of the process; to be called once, before the server runs. */
  public static void install(PrintStream out) {
    Logger root = Logger.getLogger("");
    for (Handler handler : root.getHandlers()) {
      root.removeHandler(handler);
    }
    root.addHandler(open(out));
  }

  static Journal open(PrintStream out) {
    Journal journal = new Journal(out);
    Thread writer = new Thread(journal::writeAll, "kettlemark-journal");
    writer.setDaemon(true);
    writer.start();
    return journal;
  }

  @Override
  public void publish(LogRecord entry) {
    if (!isLoggable(entry)) {
      return;
    }
    // Counted first, so that whoever waits for the last record never sees too few.
    unwritten.incrementAndGet();
    if (!records.offer(entry)) {
      unwritten.decrementAndGet();
      dropped.incrementAndGet();
    }
  }

  private void writeAll() {
    try {
      while (true) {
        LogRecord entry = records.take();
        out.print(getFormatter().format(entry));
        long lost = dropped.getAndSet(0);
        if (lost > 0) {
          out.println(lost + " log records dropped");
        }
        out.flush();
        unwritten.decrementAndGet();
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }

  /** Waits a fifth of a second at most for the records so far. */
  @Override
  public void flush() {
    try {
      for (long waited = 0; unwritten.get() > 0 && waited < PATIENCE_MILLIS; waited += 5) {
        TimeUnit.MILLISECONDS.sleep(5);
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    flush();
  }
}
