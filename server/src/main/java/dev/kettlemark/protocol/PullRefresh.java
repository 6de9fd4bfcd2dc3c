package dev.kettlemark.protocol;

import dev.kettlemark.library.Document;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Tells a client that fetches findings when to fetch again: when a change of one document has altered
 * the findings of another.
 *
 * <p>A client fetches the findings of a text that it changed by itself, so only documents whose text it
 * knows count. Each new state is told once, however often it is looked at.
 */
final class PullRefresh implements Announcer {

  private final Executor worker;
  private final DiagnosticPull pull;
  private final Runnable refresh;
  private final Map<LiveLibrary, Room> rooms = new ConcurrentHashMap<>();

  /** What is known of one library. */
  private static final class Room {
    final AtomicBoolean asked = new AtomicBoolean();
    final Map<String, String> announced = new ConcurrentHashMap<>();
  }

  PullRefresh(Executor worker, DiagnosticPull pull, Runnable refresh) {
    this.worker = worker;
    this.pull = pull;
    this.refresh = refresh;
  }

  @Override
  public void changed(LiveLibrary library) {
    Room room = rooms.computeIfAbsent(library, key -> new Room());
    if (room.asked.compareAndSet(false, true)) {
      worker.execute(() -> round(library, room));
    }
  }

  private void round(LiveLibrary library, Room room) {
    synchronized (room) {
      room.asked.set(false);
      Moment moment = library.moment();
      boolean altered = false;
      for (Document document : moment.snapshot().library().ownDocuments()) {
        if (room.asked.get()) {
          break;
        }
        altered |= isAltered(room, moment, document);
      }
      if (altered) {
        refresh.run();
      }
    }
  }

  private boolean isAltered(Room room, Moment moment, Document document) {
    Optional<DiagnosticPull.Told> told = pull.told(document.uri());
    boolean open = moment.open().containsKey(document.uri());
    if (told.isEmpty() || (open && !told.get().document().equals(document))) {
      return false;
    }
    String now = pull.resultId(moment, document, Work.unwatched());
    if (now.equals(told.get().resultId())) {
      room.announced.remove(document.uri());
      return false;
    }
    return !now.equals(room.announced.put(document.uri(), now));
  }
}
