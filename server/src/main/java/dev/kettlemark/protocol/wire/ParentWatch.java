package dev.kettlemark.protocol.wire;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;

/**
 * Notices that the process which started the server is gone.
 *
 * <p>LSP 3.17, "Initialize Request": if the parent process is not alive, the server should exit. A closed pipe usually
 * tells earlier, but another process may have inherited its open end.
 */
final class ParentWatch {

  /** Looking costs a few microseconds; the promise is five seconds. */
  private static final Duration PERIOD = Duration.ofSeconds(1);

  private ParentWatch() {}

  /** Watches a process from a daemon thread and calls {@code onDeath} once. */
  static void start(long processId, Runnable onDeath) {
    Thread watch = new Thread(() -> watch(processId, onDeath), "kettlemark-parent-watch");
    watch.setDaemon(true);
    watch.start();
  }

  private static void watch(long processId, Runnable onDeath) {
    // One handle for the whole time: it also knows when the process was started, so a reused number
    // is no disguise.
    Optional<ProcessHandle> parent = ProcessHandle.of(processId);
    try {
      while (parent.map(ProcessHandle::isAlive).orElse(false) && !isZombie(processId)) {
        Thread.sleep(PERIOD.toMillis());
      }
      onDeath.run();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }

  /** A dead process that nobody has waited for still counts as alive to Java; Linux tells the difference. */
  private static boolean isZombie(long processId) {
    Path stat = Path.of("/proc", Long.toString(processId), "stat");
    try {
      String text = Files.readString(stat, StandardCharsets.ISO_8859_1);
      return text.startsWith(") Z", text.lastIndexOf(')'));
    } catch (IOException notLinux) {
      return false;
    }
  }
}
