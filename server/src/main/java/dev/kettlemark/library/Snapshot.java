package dev.kettlemark.library;

import dev.kettlemark.syntax.Section;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A library at one moment, with every result computed so far.
 *
 * <p>Results are kept with the questions they asked and the answers they got, and with the parts of the
 * library that those went back to. In a later snapshot a result is used again if its section is the same
 * object and none of these parts has changed, or if every question still has the same answer after all;
 * otherwise it is computed again. So the cost of an edit is the cost of what it changes.
 *
 * <p>The day is part of the moment: what depends on it asks {@link Lookup#today()}, and is computed again
 * when another day begins.
 *
 * <p>Safe for use by several threads; a result may then be computed twice, with the same outcome.
 */
public final class Snapshot {

  /** Who still looks at an older snapshot may add results of sections that are gone: not without end. */
  private static final int MOST_GONE = 1000;

  /** A result that was not asked for during so many changes is held against its answers again. */
  private static final int MOST_STEPS = 64;

  private static final AtomicLong COUNT = new AtomicLong();

  /** What the computation that runs on a thread has gone back to so far. */
  private static final ThreadLocal<@Nullable Footprint> READ = new ThreadLocal<>();

  private final long number = COUNT.incrementAndGet();
  private final Library library;
  private final LocalDate today;
  private final Results kept;

  /** Results that may be used and are not added to. */
  private final List<Results> borrowed;

  private final List<Step> past;
  private final Results current = new Results();

  /** Results by their section, so that they go when it does. */
  private static final class Results {

    private final Map<Section, Map<Task<?>, Result>> bySection = new ConcurrentHashMap<>();

    @Nullable
    Result get(Task<?> task, Section section) {
      Map<Task<?>, Result> own = bySection.get(section);
      return own == null ? null : own.get(task);
    }

    void put(Task<?> task, Section section, Result result) {
      bySection.computeIfAbsent(section, key -> new ConcurrentHashMap<>()).put(task, result);
    }

    void forget(Set<Section> sections) {
      sections.forEach(bySection::remove);
    }

    void keepLasting(Section section) {
      Map<Task<?>, Result> own = bySection.get(section);
      if (own != null) {
        own.keySet().removeIf(task -> !task.isLasting());
      }
    }

    /** Of how many sections there are any. */
    int count() {
      return bySection.size();
    }
  }

  /** What changed from an earlier snapshot to the next. */
  private record Step(long from, Changes changes) {}

  /**
   * A result with its questions and their answers, in the order asked: an early answer may decide
   * whether a later question makes sense at all.
   */
  private static final class Result {

    private final Object value;
    private final Map<Question<?>, Object> answers;
    private final Footprint footprint;

    /** The snapshot in which it was last known to be right. */
    private volatile long rightAt;

    Result(Object value, Map<Question<?>, Object> answers, Footprint footprint, long rightAt) {
      this.value = value;
      this.answers = answers;
      this.footprint = footprint;
      this.rightAt = rightAt;
    }
  }

  private Snapshot(
      Library library, LocalDate today, Results kept, List<Results> borrowed, List<Step> past) {
    this.library = library;
    this.today = today;
    this.kept = kept;
    this.borrowed = borrowed;
    this.past = past;
  }

  /** A library on a day before all others, so that nothing in it has run out. */
  public static Snapshot of(Library library) {
    return of(library, LocalDate.MIN);
  }

  public static Snapshot of(Library library, LocalDate today) {
    return new Snapshot(library, today, new Results(), List.of(), List.of());
  }

  LocalDate today() {
    touch(Part.day());
    return today;
  }

  /**
   * The whole library.
   *
   * <p>A result that is computed from it is held against its answers again after every change; what is
   * asked often goes by {@link #find} or {@link Lookup}.
   */
  public Library library() {
    touch(Part.all());
    return library;
  }

  /** The entry that a name means. */
  public Optional<Entry> find(Kind kind, String name) {
    return reading(Part.named(kind, name)).find(kind, name);
  }

  /** The house that holds for a document. */
  public Optional<Entry> houseFor(String uri) {
    return reading(Part.houses()).houseFor(uri);
  }

  /** The library, of which only one part is looked at. */
  Library reading(Part part) {
    touch(part);
    return library;
  }

  private static void touch(Part part) {
    Footprint read = READ.get();
    if (read != null) {
      read.add(part);
    }
  }

  /** The next moment of the same day; what did not change is not computed again. */
  public Snapshot with(Library next) {
    return with(next, today);
  }

  /** The next moment; what did not change is not computed again. */
  public Snapshot with(Library next, LocalDate day) {
    Changes changes = Changes.between(library, next, day.equals(today));
    kept.forget(changes.gone());
    Results carried = kept.count() > sectionCount(next) + MOST_GONE ? new Results() : kept;
    return new Snapshot(next, day, carried, borrowed, steps(changes));
  }

  /**
   * The library as it would be, to be looked at and forgotten.
   *
   * <p>It uses what is known here, and nothing that it computes takes the place of it.
   */
  public Snapshot tried(Library other) {
    List<Results> known = new ArrayList<>(borrowed);
    known.add(0, kept);
    return new Snapshot(
        other,
        today,
        new Results(),
        List.copyOf(known),
        steps(Changes.between(library, other, true)));
  }

  private List<Step> steps(Changes changes) {
    List<Step> steps = new ArrayList<>(MOST_STEPS);
    steps.add(new Step(number, changes.lasting()));
    steps.addAll(past.subList(0, Math.min(past.size(), MOST_STEPS - 1)));
    return List.copyOf(steps);
  }

  private static int sectionCount(Library library) {
    int count = 0;
    for (Document document : library.documents()) {
      count += document.entries().size();
    }
    return count;
  }

  /**
   * Lets go of what was read and computed of a document, but for what lasts.
   *
   * <p>It is read and computed again when it is asked for. So a large library takes the memory of its texts and
   * findings, and not of all that leads from the ones to the others.
   */
  public void letGo(Document document) {
    for (Entry entry : document.entries()) {
      kept.keepLasting(entry.section());
      current.keepLasting(entry.section());
    }
    document.letGo();
  }

  /** The result of a task on an entry of this snapshot. */
  @SuppressWarnings("unchecked") // A result is kept under the task that made it.
  public <T> T result(Task<T> task, Entry entry) {
    Section section = entry.section();
    Result result = current.get(task, section);
    if (result == null) {
      result = kept.get(task, section);
      if (result != null && isUntouched(result)) {
        // Nearly all of a long text, at each key: nothing is made and nothing put away.
        result.rightAt = number;
      } else {
        result = right(known(task, section)).orElseGet(() -> computed(task, entry));
        kept.put(task, section, result);
        current.put(task, section, result);
      }
    }
    Footprint read = READ.get();
    if (read != null) {
      read.addAll(result.footprint);
    }
    return (T) result.value;
  }

  private @Nullable Result known(Task<?> task, Section section) {
    Result known = kept.get(task, section);
    for (int i = 0; known == null && i < borrowed.size(); i++) {
      known = borrowed.get(i).get(task, section);
    }
    return known;
  }

  private Result computed(Task<?> task, Entry entry) {
    Recorder recorder = new Recorder();
    Footprint footprint = new Footprint();
    Object value = reading(footprint, () -> task.compute(entry, recorder));
    return new Result(value, Collections.unmodifiableMap(recorder.answers), footprint, number);
  }

  /** An earlier result as it holds here; empty where it does not. */
  private Optional<Result> right(@Nullable Result old) {
    if (old == null) {
      return Optional.empty();
    }
    if (isUntouched(old)) {
      return Optional.of(new Result(old.value, old.answers, old.footprint, number));
    }
    Footprint footprint = new Footprint();
    return reading(footprint, () -> stillHolds(old))
        ? Optional.of(new Result(old.value, old.answers, footprint, number))
        : Optional.empty();
  }

  /** Whether nothing that a result goes back to has changed since it was known to be right. */
  private boolean isUntouched(Result result) {
    long rightAt = result.rightAt;
    if (rightAt == number) {
      return true;
    }
    for (Step step : past) {
      if (step.changes().touch(result.footprint)) {
        return false;
      }
      if (step.from() == rightAt) {
        return true;
      }
    }
    return false;
  }

  private boolean stillHolds(Result result) {
    for (Map.Entry<Question<?>, Object> asked : result.answers.entrySet()) {
      if (!Objects.equals(asked.getKey().ask(this), asked.getValue())) {
        return false;
      }
    }
    return true;
  }

  /** Does something and notes what it goes back to. */
  private static <T> T reading(Footprint footprint, Supplier<T> work) {
    Footprint outer = READ.get();
    READ.set(footprint);
    try {
      return work.get();
    } finally {
      READ.set(outer);
    }
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
