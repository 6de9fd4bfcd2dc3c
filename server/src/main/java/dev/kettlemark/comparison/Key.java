package dev.kettlemark.comparison;

import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Declaration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * By what a section of one state is found again in another.
 *
 * @param kind empty for text that declares nothing
 */
record Key(Optional<Kind> kind, String name) {

  private static final Key NOTHING = new Key(Optional.empty(), "");

  static Key of(Entry entry) {
    return entry
        .declaration()
        .map(declaration ->
            new Key(entry.section().keyword().map(Kind::of), declaration.name().value()))
        .orElse(NOTHING);
  }

  static Key material(String name) {
    return new Key(Optional.of(Kind.MATERIAL), name);
  }

  /** The user's sections by their key, in order of file and place. */
  static Map<Key, List<Entry>> own(Snapshot snapshot) {
    Map<Key, List<Entry>> own = new LinkedHashMap<>();
    snapshot.library().ownDocuments().stream()
        .flatMap(document -> document.entries().stream())
        .forEach(
            entry -> own.computeIfAbsent(of(entry), key -> new ArrayList<>(1)).add(entry));
    return own;
  }

  /** The section that the name means, a built-in one among them. */
  Optional<Entry> in(Library library) {
    return kind.flatMap(k -> library.find(k, name));
  }

  /** {@code ingredient}, {@code formula} and so on. */
  static String word(Entry entry) {
    return entry
        .declaration()
        .map(Declaration::getClass)
        .map(type -> type.getSimpleName().toLowerCase(Locale.ROOT))
        .orElse("text");
  }
}
