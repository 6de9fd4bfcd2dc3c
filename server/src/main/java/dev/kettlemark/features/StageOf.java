package dev.kettlemark.features;

import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Scope;
import dev.kettlemark.library.Task;
import java.util.Optional;

/** What a stage name means in a section; a variant may speak of its parent's stages. */
record StageOf(String name) implements Task<Optional<Symbol>> {

  @Override
  public Optional<Symbol> compute(Entry entry, Scope scope) {
    return Lineage.of(entry.declaration(), scope).stage(name);
  }
}
