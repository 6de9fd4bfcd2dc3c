package dev.kettlemark.library;

import dev.kettlemark.syntax.Section;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A library at one moment, with every result computed so far.
 *
 * <p>Results are kept with the questions they asked and the answers they got. In a later snapshot a
 * result is used again if its section is the same object and every question still has the same
 * answer; otherwise it is computed again. So the cost of an edit is the cost of what it changes.
 *
 * <p>The day is part of the moment: what depends on it asks {@link Lookup#today()}, and is computed again
 * when another day begins.
 *
 * <p>Safe for use by several threads; a result may then be computed twice, with the same outcome.
 */
public final class Snapshot {

  /** Results of sections long gone are dropped once they outnumber the living by far. */
  private static final int MOST_RESULTS_PER_SECTION = 16;

  private final Library library;
  private final LocalDate today;
  private final Map<Key, Result> kept;
  private final Map<Key, Object> current = new ConcurrentHashMap<>();

  /** What was computed and from which section. */
  private record Key(Task<?> task, Section section) {}

  /**
   * A result with its questions and their answers, in the order asked: an early answer may decide
   * whether a later question makes sense at all.
   */
  private record Result(Object value, Map<Question<?>, Object> answers) {}

  private Snapshot(Library library, LocalDate today, Map<Key, Result> kept) {
    this.library = library;
    this.today = today;
    this.kept = kept;
  }

  /** A library on a day before all others, so that nothing in it has run out. */
  public static Snapshot of(Library library) {
    return of(library, LocalDate.MIN);
  }

  public static Snapshot of(Library library, LocalDate today) {
    return new Snapshot(library, today, new ConcurrentHashMap<>());
  }

  LocalDate today() {
    return today;
  }

  public Library library() {
    return library;
  }

  /** The next moment of the same day; what did not change is not computed again. */
  public Snapshot with(Library next) {
    return with(next, today);
  }

  /** The next moment; what did not change is not computed again. */
  public Snapshot with(Library next, LocalDate day) {
    Map<Key, Result> carried = kept;
    if (carried.size() > MOST_RESULTS_PER_SECTION * sectionCount(next) + 1000) {
      carried = new ConcurrentHashMap<>();
    }
    return new Snapshot(next, day, carried);
  }

  private static int sectionCount(Library library) {
    return library.documents().stream()
        .mapToInt(document -> document.entries().size())
        .sum();
  }

  /** The result of a task on an entry of this snapshot. */
  @SuppressWarnings("unchecked") // A key's task has the result's type.
  public <T> T result(Task<T> task, Entry entry) {
    Key key = new Key(task, entry.section());
    Object known = current.get(key);
    if (known != null) {
      return (T) known;
    }
    Result old = kept.get(key);
    if (old != null && stillHolds(old)) {
      current.put(key, old.value());
      return (T) old.value();
    }
    Recorder recorder = new Recorder();
    T value = task.compute(entry, recorder);
    kept.put(key, new Result(value, Collections.unmodifiableMap(recorder.answers)));
    current.put(key, value);
    return value;
  }

  private boolean stillHolds(Result result) {
    for (Map.Entry<Question<?>, Object> asked : result.answers().entrySet()) {
      if (!Objects.equals(asked.getKey().ask(this), asked.getValue())) {
        return false;
      }
    }
    return true;
  }

  private final class Recorder implements Scope {

    private final Map<Question<?>, Object> answers = new LinkedHashMap<>();

    @Override
    @SuppressWarnings("unchecked") // A question's answer has its type.
    public <T> T ask(Question<T> question) {
      // Many rules ask the same, and within one snapshot the answer stays the same.
      Object known = answers.get(question);
      if (known != null) {
        return (T) known;
      }
      T answer = question.ask(Snapshot.this);
      answers.put(question, answer);
      return answer;
    }
  }
}
