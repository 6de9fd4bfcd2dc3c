package dev.kettlemark.comparison;

import dev.kettlemark.labelling.IngredientUse;
import dev.kettlemark.labelling.Labels;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Mentions;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Trial;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** On which sections a section depends, through all that it is made of. */
final class Dependence {

  private final Snapshot snapshot;

  Dependence(Snapshot snapshot) {
    this.snapshot = snapshot;
  }

  /** Itself, its materials down to the pantry, its house and its trials. */
  Set<Key> of(Entry entry) {
    Library library = snapshot.library();
    Set<Key> keys = new LinkedHashSet<>();
    Deque<Entry> open = new ArrayDeque<>(List.of(entry));
    keys.add(Key.of(entry));
    while (!open.isEmpty()) {
      materials(open.pop())
          .map(Key::material)
          .filter(keys::add)
          .forEach(key -> key.in(library).ifPresent(open::push));
    }
    // What no line weighs in, such as wafer paper around the mass.
    snapshot.result(Labels.MAKEUP, entry).stream()
        .flatMap(makeup -> makeup.uses().stream())
        .map(IngredientUse::name)
        .map(Key::material)
        .forEach(keys::add);
    library.houseFor(entry.uri()).map(Key::of).ifPresent(keys::add);
    library.trialsOf(Key.of(entry).name()).stream().map(Key::of).forEach(keys::add);
    return keys;
  }

  private static Stream<String> materials(Entry entry) {
    return entry.declaration().stream().flatMap(Dependence::materials).map(Located::value);
  }

  private static Stream<Located<String>> materials(Declaration declaration) {
    if (declaration instanceof Product product) {
      return product.parts().stream().flatMap(part -> part.material().stream());
    }
    return declaration instanceof Trial trial
        ? trial.formula().stream()
        : Mentions.used(declaration).stream();
  }
}
