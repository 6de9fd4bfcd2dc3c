package dev.kettlemark.protocol;

import java.util.function.Consumer;
import org.eclipse.lsp4j.ProgressParams;
import org.eclipse.lsp4j.WorkDoneProgressBegin;
import org.eclipse.lsp4j.WorkDoneProgressEnd;
import org.eclipse.lsp4j.WorkDoneProgressNotification;
import org.eclipse.lsp4j.WorkDoneProgressReport;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/**
 * How far a piece of work is, told under a token: one begin, reports while the figure moves, one end.
 *
 * <p>A client may take its time to open the token; what happens before that is told with the begin, and
 * work that is over by then is not told of at all.
 */
final class Progress {

  private enum Phase {
    CLOSED,
    BEGUN,
    ENDED
  }

  private final Consumer<ProgressParams> client;
  private final Either<String, Integer> token;
  private final String title;
  private final boolean cancellable;
  private Phase phase = Phase.CLOSED;
  private int percent = -1;
  private String message = "";

  Progress(
      Consumer<ProgressParams> client,
      Either<String, Integer> token,
      String title,
      boolean cancellable) {
    this.client = client;
    this.cancellable = cancellable;
    this.token = token;
    this.title = title;
  }

  /** The client is ready to be told. */
  synchronized void open() {
    if (phase != Phase.CLOSED) {
      return;
    }
    phase = Phase.BEGUN;
    WorkDoneProgressBegin begin = new WorkDoneProgressBegin();
    begin.setTitle(title);
    begin.setCancellable(cancellable);
    begin.setPercentage(Math.max(0, percent));
    if (!message.isEmpty()) {
      begin.setMessage(message);
    }
    send(begin);
  }

  /** Some of all steps are done; told when the percentage has moved. */
  synchronized void report(int done, int all) {
    int now = all <= 0 ? 100 : (int) Math.min(100, 100L * done / all);
    message = done + " of " + all;
    if (now <= percent) {
      return;
    }
    percent = now;
    if (phase == Phase.BEGUN) {
      WorkDoneProgressReport report = new WorkDoneProgressReport();
      report.setPercentage(percent);
      report.setMessage(message);
      send(report);
    }
  }

  synchronized void end() {
    Phase before = phase;
    phase = Phase.ENDED;
    if (before == Phase.BEGUN) {
      send(new WorkDoneProgressEnd());
    }
  }

  private void send(WorkDoneProgressNotification notification) {
    client.accept(new ProgressParams(token, Either.forLeft(notification)));
  }
}
