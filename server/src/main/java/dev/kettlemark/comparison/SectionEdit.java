package dev.kettlemark.comparison;

import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A section whose text differs between the two states: the cause of whatever else differs.
 *
 * @param word {@code ingredient}, {@code formula} and so on
 * @param how what happened to it
 * @param lines what changed in it; empty where it is new or gone
 */
public record SectionEdit(String word, String name, How how, List<LineChange> lines) {

  /** What can happen to a section. */
  public enum How {
    NEW("new"),
    GONE("gone"),
    CHANGED("changed"),
    /** It is new, and the built-in pantry has one of that name. */
    OVERRIDES("in place of the built-in one"),
    /** It is gone, and the built-in pantry has one of that name. */
    RESTORES("gone, so that the built-in one counts");

    private final String words;

    How(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  public SectionEdit {
    lines = List.copyOf(lines);
  }

  /** A section that differs, under the key by which others depend on it. */
  record Keyed(Key key, SectionEdit edit) {}

  static List<Keyed> between(Snapshot before, Snapshot after) {
    Set<Key> keys = new LinkedHashSet<>(Key.own(after).keySet());
    keys.addAll(Key.own(before).keySet());
    List<Keyed> edits = new ArrayList<>();
    for (Key key : keys) {
      of(key, key.in(before.library()), key.in(after.library()))
          .ifPresent(edit -> edits.add(new Keyed(key, edit)));
    }
    return edits;
  }

  private static Optional<SectionEdit> of(Key key, Optional<Entry> before, Optional<Entry> after) {
    Optional<Entry> told = after.or(() -> before);
    if (told.isEmpty()) {
      return Optional.empty();
    }
    String word = Key.word(told.get());
    if (before.isEmpty() || after.isEmpty()) {
      How how = before.isEmpty() ? How.NEW : How.GONE;
      return Optional.of(new SectionEdit(word, key.name(), how, List.of()));
    }
    List<LineChange> lines =
        LineChange.between(before.get().section().text(), after.get().section().text());
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(new SectionEdit(word, key.name(), how(before.get(), after.get()), lines));
  }

  private static How how(Entry before, Entry after) {
    if (isBuiltIn(before) == isBuiltIn(after)) {
      return How.CHANGED;
    }
    return isBuiltIn(before) ? How.OVERRIDES : How.RESTORES;
  }

  private static boolean isBuiltIn(Entry entry) {
    return entry.uri().startsWith(Pantry.SCHEME);
  }
}
