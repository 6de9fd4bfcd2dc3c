package dev.kettlemark.features;

import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.library.Scope;
import dev.kettlemark.library.Task;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Variant;
import dev.kettlemark.model.VariantChange;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The lines of a section that take something into something.
 *
 * @param taker the stage or product that takes; a variant, where a change of it does
 * @param taken the stage or material that is taken
 * @param span the line, counted from the section's start
 */
record Takings(Symbol taker, Symbol taken, Span span) {

  /** All of a section, in order of its stages. */
  static final Task<List<Takings>> ALL = (entry, scope) -> new Finder(entry, scope).found();

  private static final class Finder {

    private final Entry entry;
    private final Scope scope;
    private final List<Takings> found = new ArrayList<>();

    Finder(Entry entry, Scope scope) {
      this.entry = entry;
      this.scope = scope;
    }

    List<Takings> found() {
      entry.declaration().ifPresent(this::read);
      return List.copyOf(found);
    }

    private void read(Declaration declaration) {
      if (declaration instanceof Formula formula) {
        formula.stages().forEach(stage -> stage(stage, Optional.of(formula)));
      } else if (declaration instanceof Variant variant) {
        Symbol self = Symbol.global(Symbol.Kind.MATERIAL, variant.name().value());
        variant.changes().forEach(change -> change(self, change));
        variant.stages().forEach(stage -> stage(stage, Optional.of(variant)));
      } else if (declaration instanceof Product product) {
        Symbol self = Symbol.global(Symbol.Kind.PRODUCT, product.name().value());
        product
            .parts()
            .forEach(part -> part.material().ifPresent(name -> material(self, name, part.span())));
      }
    }

    private void change(Symbol self, VariantChange change) {
      if (change instanceof VariantChange.Replace replace) {
        material(self, replace.replacement().ingredient(), change.span());
      } else if (change instanceof VariantChange.Add add) {
        material(self, add.line().ingredient(), change.span());
      } else if (change instanceof VariantChange.Change other) {
        material(self, other.line().ingredient(), change.span());
      }
    }

    private void stage(Stage stage, Optional<Declaration> declaration) {
      Lineage lineage = Lineage.of(declaration, scope);
      lineage.stage(stage.name().value()).ifPresent(self -> {
        stage.amounts().forEach(line -> material(self, line.ingredient(), line.span()));
        stage
            .takes()
            .forEach(take -> lineage
                .stage(take.stage().value())
                .ifPresent(taken -> found.add(new Takings(self, taken, take.span()))));
      });
    }

    private void material(Symbol self, Located<String> name, Span line) {
      if (scope.ask(Lookup.of(Kind.MATERIAL, name.value())).isPresent()) {
        found.add(new Takings(self, Symbol.global(Symbol.Kind.MATERIAL, name.value()), line));
      }
    }
  }
}
