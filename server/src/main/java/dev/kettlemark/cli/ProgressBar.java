package dev.kettlemark.cli;

/**
 * How far something long has come: a bar that moves on a terminal, a line now and then elsewhere.
 *
 * <p>Safe for use by several threads.
 */
final class ProgressBar {

  private static final int CELLS = 30;

  /** Into a file it tells so many times. */
  private static final int TOLD = 10;

  private final Terminal terminal;
  private final int all;
  private final boolean quiet;
  private int done;
  private int told;

  ProgressBar(Terminal terminal, int all, boolean quiet) {
    this.terminal = terminal;
    this.all = Math.max(1, all);
    this.quiet = quiet;
  }

  synchronized void step() {
    done++;
    if (quiet) {
      return;
    }
    int cells = Math.min(CELLS, CELLS * done / all);
    if (terminal.interactive()) {
      if (cells != told) {
        told = cells;
        terminal
            .err()
            .print("\r[" + "#".repeat(cells) + " ".repeat(CELLS - cells) + "] " + done + " of "
                + all + " pages");
        terminal.err().flush();
      }
    } else if (all >= 10 * TOLD && TOLD * done / all > told) {
      told = TOLD * done / all;
      terminal.err().println(done + " of " + all + " pages");
      terminal.err().flush();
    }
  }

  /** Clears the bar. */
  synchronized void end() {
    if (!quiet && terminal.interactive()) {
      terminal.err().print("\r" + " ".repeat(CELLS + 30) + "\r");
      terminal.err().flush();
    }
  }
}
