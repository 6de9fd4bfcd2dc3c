package dev.kettlemark.protocol;

import dev.kettlemark.features.Navigation;
import dev.kettlemark.features.Symbols;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.lsp4j.DocumentHighlight;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.ReferenceParams;

/** Where a name is declared and used. */
final class NavigationAdapter {

  private NavigationAdapter() {}

  static List<Location> definition(Scene scene, Position position) {
    return scene.locations(
        Navigation.definition(scene.snapshot(), scene.document(), scene.offset(position)));
  }

  /** Every place that speaks of the thing at a position, document by document. */
  static List<Location> references(
      Scene scene, ReferenceParams params, Optional<Consumer<List<Location>>> parts, Work work) {
    Optional<Symbols.Found> found =
        Symbols.at(scene.snapshot(), scene.document(), scene.offset(params.getPosition()));
    return found
        .map(name -> work.forEach(
            Navigation.searches(scene.snapshot(), params.getContext().isIncludeDeclaration()),
            search -> scene.locations(search.places(scene.snapshot(), name.symbol())),
            parts))
        .orElse(List.of());
  }

  static List<DocumentHighlight> highlights(Scene scene, Position position) {
    return Navigation.highlights(scene.snapshot(), scene.document(), scene.offset(position))
        .stream()
        .map(span -> new DocumentHighlight(scene.positions().range(scene.source(), span)))
        .toList();
  }
}
