package dev.kettlemark.library;

import dev.kettlemark.syntax.Section;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What is no longer the same from one library to the next.
 *
 * <p>It may name a part that is the same after all, and never leaves one out.
 *
 */
final class Changes {

  /** Beyond this it costs more to ask for each part than to look at each result anew. */
  private static final int MOST = 400;

  /** The {@linkplain Footprint#mark marks} of the parts that changed. */
  private final int[] marks;

  /** Whether so much changed that it is not told apart. */
  private final boolean isWhole;

  private final Set<Section> gone;

  private Changes(int[] marks, boolean isWhole, Set<Section> gone) {
    this.marks = marks;
    this.isWhole = isWhole;
    this.gone = gone;
  }

  /** The changes from one library to another, and from one day to another. */
  static Changes between(Library before, Library after, boolean isSameDay) {
    Comparison comparison = new Comparison();
    Set<Section> gone = Collections.newSetFromMap(new IdentityHashMap<>());
    if (before != after) {
      for (String uri : differing(before, after)) {
        Document old = before.document(uri).orElse(null);
        Document fresh = after.document(uri).orElse(null);
        sections(old).forEach(gone::add);
        sections(fresh).forEach(gone::remove);
        if (comparison.parts.size() <= MOST) {
          comparison.compare(uri, old, fresh);
        }
      }
    }
    Set<Part> parts = comparison.all();
    if (!isSameDay) {
      parts.add(Part.day());
    }
    if (!parts.isEmpty()) {
      parts.add(Part.all());
    }
    boolean isWhole = parts.size() > MOST;
    int[] marks =
        isWhole ? new int[0] : parts.stream().mapToInt(Footprint::mark).toArray();
    return new Changes(marks, isWhole, gone);
  }

  private static Stream<Section> sections(@Nullable Document document) {
    return document == null ? Stream.of() : document.entries().stream().map(Entry::section);
  }

  /** The documents that are not the very same on both sides. */
  private static Set<String> differing(Library before, Library after) {
    Set<String> uris = new TreeSet<>();
    Set<Document> gone = Collections.newSetFromMap(new IdentityHashMap<>());
    gone.addAll(before.documents());
    for (Document document : after.documents()) {
      if (!gone.remove(document)) {
        uris.add(document.uri());
      }
    }
    gone.forEach(document -> uris.add(document.uri()));
    return uris;
  }

  /** The same without the sections that are gone, which nobody asks for later. */
  Changes lasting() {
    return new Changes(marks, isWhole, Set.of());
  }

  /** The sections that the library no longer holds. */
  Set<Section> gone() {
    return gone;
  }

  boolean touch(Footprint footprint) {
    return isWhole || footprint.mayHoldAny(marks);
  }

  /** Gathers the parts that differ, document by document. */
  private static final class Comparison {

    private final Set<Part> parts = new HashSet<>();

    /** How many more there are afterwards than before; a part differs where that is not none. */
    private final Map<Part, Integer> more = new HashMap<>();

    /** The same of the names of each kind, which differ together. */
    private final Map<Kind, Map<String, Integer>> names = new EnumMap<>(Kind.class);

    void compare(String uri, @Nullable Document before, @Nullable Document after) {
      boolean isAlike = before == null || after == null || before.builtIn() == after.builtIn();
      if (before != null && after != null && isAlike && before.text().equals(after.text())) {
        return;
      }
      List<Entry> old = before == null ? List.of() : before.entries();
      List<Entry> fresh = after == null ? List.of() : after.entries();
      if ((before != null && before.isTooLong()) || (after != null && after.isTooLong())) {
        parts.add(Part.length(uri));
      }
      if (old.isEmpty() || fresh.isEmpty() || !old.get(0).equals(fresh.get(0))) {
        parts.add(Part.opening(uri));
      }
      int head = isAlike ? alike(old, fresh, false, 0) : 0;
      int tail = isAlike ? alike(old, fresh, true, head) : 0;
      old.subList(head, old.size() - tail).forEach(entry -> count(entry, -1));
      fresh.subList(head, fresh.size() - tail).forEach(entry -> count(entry, 1));
    }

    /** How many sections are the same from the start, or from the end and not among those. */
    private static int alike(List<Entry> old, List<Entry> fresh, boolean isFromEnd, int taken) {
      int most = Math.min(old.size(), fresh.size()) - taken;
      int same = 0;
      while (same < most) {
        Entry one = old.get(isFromEnd ? old.size() - 1 - same : same);
        Entry other = fresh.get(isFromEnd ? fresh.size() - 1 - same : same);
        if (!one.equals(other)) {
          return same;
        }
        same++;
      }
      return same;
    }

    private void count(Entry entry, int by) {
      entry.sign().ifPresent(sign -> count(sign, by));
      if (entry.isFormula()) {
        count(Part.formulas(), by);
      }
    }

    private void count(Sign sign, int by) {
      parts.add(Part.named(sign.kind(), sign.name()));
      names
          .computeIfAbsent(sign.kind(), key -> new HashMap<>())
          .merge(sign.name(), by, Integer::sum);
      sign.code().ifPresent(code -> parts.add(Part.code(code)));
      sign.reference().ifPresent(to -> {
        switch (to.way()) {
          case TRIES -> parts.add(Part.trials(to.name()));
          case SHOWS -> parts.add(Part.sheets(to.name()));
          case VARIES -> {
            // Who asks for the variants of a formula asks for their names.
          }
        }
      });
      if (sign.kind() == Kind.HOUSE) {
        parts.add(Part.houses());
      }
      sign.mentioned().forEach(word -> count(Part.mention(word), by));
    }

    private void count(Part part, int by) {
      more.merge(part, by, Integer::sum);
    }

    Set<Part> all() {
      more.forEach((part, count) -> {
        if (count != 0) {
          parts.add(part);
        }
      });
      names.forEach((kind, counts) -> {
        if (counts.values().stream().anyMatch(count -> count != 0)) {
          parts.add(Part.names(kind));
        }
      });
      return parts;
    }
  }
}
