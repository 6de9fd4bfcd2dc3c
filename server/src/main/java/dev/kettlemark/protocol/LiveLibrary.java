package dev.kettlemark.protocol;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.syntax.ParsedText;
import dev.kettlemark.text.Lazy;
import dev.kettlemark.text.TextEdit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * One library while editors change it: open buffers win over the disk.
 *
 * <p>Changes come in order from one thread, but for a new day, which whoever asks notices; readers take a
 * {@link Moment} and keep it.
 */
final class LiveLibrary {

  private final Map<String, Document> onDisk = new HashMap<>();
  private final Supplier<LocalDate> today;
  private final UnaryOperator<String> spelling;
  private LocalDate day;
  private volatile Moment moment;

  /** The snapshot that was made last, of which the next one takes over what it can; under {@link #making}. */
  private Snapshot newest;

  private final Object making = new Object();

  /**
   * A library without texts of its own.
   *
   * @param today tells the day; a clock that is set may also turn it back
   * @param spelling how the client spells a file that no editor holds
   */
  LiveLibrary(Supplier<LocalDate> today, UnaryOperator<String> spelling) {
    this.today = today;
    this.spelling = spelling;
    day = today.get();
    Library pantry = Library.of(Pantry.documents());
    newest = Snapshot.of(pantry, day);
    moment = new Moment(pantry, Lazy.known(newest), Map.of(), spelling);
  }

  Moment moment() {
    return moment;
  }

  /** Becomes the same library of another day, if it is another day; says so. */
  synchronized boolean turnDay() {
    boolean turns = !today.get().equals(day);
    if (turns) {
      become(moment.library(), moment.open());
    }
    return turns;
  }

  /** Takes over what lies on the disk, in one step. */
  synchronized void load(List<Document> texts) {
    List<Document> documents = new ArrayList<>();
    texts.forEach(document -> onDisk.put(document.uri(), document));
    moment.library().documents().stream()
        .filter(document -> document.builtIn() || moment.open().containsKey(document.uri()))
        .forEach(documents::add);
    onDisk.forEach((key, document) -> {
      if (!moment.open().containsKey(key)) {
        documents.add(document);
      }
    });
    become(Library.of(documents), moment.open());
  }

  synchronized void open(String key, Moment.OpenBuffer buffer, String text) {
    Map<String, Moment.OpenBuffer> open = new HashMap<>(moment.open());
    open.put(key, buffer);
    Document document = moment
        .document(key)
        .filter(known -> known.builtIn() || known.text().source().text().equals(text))
        .orElseGet(() -> Document.of(key, text));
    become(moment.library().with(document), open);
  }

  /** Applies edits to an open buffer, each to the text that the one before left; the pantry is not edited. */
  synchronized void change(
      String key, Moment.OpenBuffer buffer, List<Function<ParsedText, TextEdit>> edits) {
    Document document = moment.document(key).orElseGet(() -> Document.of(key, ""));
    if (document.builtIn()) {
      return;
    }
    for (Function<ParsedText, TextEdit> edit : edits) {
      document = document.with(edit.apply(document.text()));
    }
    Map<String, Moment.OpenBuffer> open = new HashMap<>(moment.open());
    open.put(key, buffer);
    become(moment.library().with(document), open);
  }

  /** The disk counts again; a page of the pantry stays. */
  synchronized void close(String key) {
    Map<String, Moment.OpenBuffer> open = new HashMap<>(moment.open());
    open.remove(key);
    Optional<Document> page = moment.document(key).filter(Document::builtIn);
    Document disk = page.isPresent() ? page.get() : onDisk.get(key);
    Library library = moment.library();
    become(disk == null ? library.without(key) : library.with(disk), open);
  }

  synchronized void changedOnDisk(String key, String text) {
    Document disk = onDisk.get(key);
    Document changed = disk == null
        ? Document.of(key, text)
        : disk.text().source().text().equals(text) ? disk : Document.of(key, text);
    onDisk.put(key, changed);
    if (!moment.open().containsKey(key)) {
      become(moment.library().with(changed), moment.open());
    }
  }

  synchronized void deletedOnDisk(String key) {
    onDisk.remove(key);
    if (!moment.open().containsKey(key)) {
      become(moment.library().without(key), moment.open());
    }
  }

  /** A folder is gone, and all files below it; says whether it held any. */
  synchronized boolean deletedBelow(String folder) {
    List<String> gone =
        onDisk.keySet().stream().filter(key -> key.startsWith(folder)).toList();
    gone.forEach(this::deletedOnDisk);
    return !gone.isEmpty();
  }

  /**
   * The library as it would be without what editors have not saved.
   *
   * @param disk the text of a document as it lies on the disk; empty where it lies on none
   */
  Library saved(Function<String, Optional<String>> disk) {
    Library saved = moment.library();
    for (String key : moment.open().keySet()) {
      Optional<String> text = disk.apply(key);
      saved = text.isEmpty() ? saved.without(key) : saved.with(saved(key, text.get()));
    }
    return saved;
  }

  /** The document of a text, the known one where it has that text, since results hang on it. */
  private Document saved(String key, String text) {
    return Stream.of(moment.document(key), Optional.ofNullable(onDisk.get(key)))
        .flatMap(Optional::stream)
        .filter(document -> document.text().source().text().equals(text))
        .findFirst()
        .orElseGet(() -> Document.of(key, text));
  }

  private void become(Library library, Map<String, Moment.OpenBuffer> open) {
    LocalDate now = today.get();
    day = now;
    moment = new Moment(library, Lazy.of(() -> results(library, now)), open, spelling);
  }

  /** On the thread that first asks, and not on that of the changes: of a burst only the last is asked for. */
  private Snapshot results(Library library, LocalDate then) {
    synchronized (making) {
      newest = newest.with(library, then);
      return newest;
    }
  }
}
