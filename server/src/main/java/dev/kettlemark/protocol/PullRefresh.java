package dev.kettlemark.protocol;

import dev.kettlemark.library.Document;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;

/**
 * Tells a client that fetches findings when to fetch again: when a change of one document has altered
 * the findings of another.
 *
 * <p>A client fetches the findings of a text that it changed by itself, so only documents whose text it
 * knows count. Each new state is told once, however often it is looked at.
 */
final class PullRefresh implements Announcer {

  private final DiagnosticPull pull;
  private final Runnable refresh;

  /** What was announced of each document of a library. */
  private final Rounds<Map<String, String>> rounds;

  PullRefresh(Executor worker, DiagnosticPull pull, Runnable refresh) {
    this.pull = pull;
    this.refresh = refresh;
    this.rounds = new Rounds<>(worker, HashMap::new, this::round);
  }

  @Override
  public void changed(LiveLibrary library) {
    rounds.ask(library);
  }

  private void round(
      LiveLibrary library, Map<String, String> announced, BooleanSupplier overtaken) {
    Moment moment = library.moment();
    boolean altered = false;
    for (Document document : moment.library().ownDocuments()) {
      if (overtaken.getAsBoolean()) {
        break;
      }
      altered |= isAltered(announced, moment, document);
    }
    if (altered) {
      refresh.run();
    }
  }

  private boolean isAltered(Map<String, String> announced, Moment moment, Document document) {
    Optional<DiagnosticPull.Told> told = pull.told(document.uri());
    boolean open = moment.open().containsKey(document.uri());
    if (told.isEmpty() || (open && !told.get().document().equals(document))) {
      return false;
    }
    String now = pull.resultId(moment, document, Work.unwatched());
    if (now.equals(told.get().resultId())) {
      announced.remove(document.uri());
      return false;
    }
    return !now.equals(announced.put(document.uri(), now));
  }
}
