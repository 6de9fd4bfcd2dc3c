package dev.kettlemark.protocol;

import dev.kettlemark.features.Navigation;
import dev.kettlemark.features.Symbols;
import dev.kettlemark.features.Variants;
import dev.kettlemark.library.Place;
import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.lsp4j.DocumentHighlight;
import org.eclipse.lsp4j.DocumentHighlightKind;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.LocationLink;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/** Where a name is declared and used. */
final class NavigationAdapter {

  private NavigationAdapter() {}

  static Either<List<? extends Location>, List<? extends LocationLink>> definition(
      Scene scene, Position position) {
    return linked(
        scene,
        position,
        Navigation.definition(scene.snapshot(), scene.document(), scene.offset(position)));
  }

  static Either<List<? extends Location>, List<? extends LocationLink>> implementation(
      Scene scene, Position position) {
    return linked(
        scene,
        position,
        Variants.implementations(scene.snapshot(), scene.document(), scene.offset(position)));
  }

  /** Says from which word it goes, if the client reads that. */
  private static Either<List<? extends Location>, List<? extends LocationLink>> linked(
      Scene scene, Position position, List<Place> places) {
    Optional<Span> origin =
        Navigation.origin(scene.snapshot(), scene.document(), scene.offset(position));
    List<Location> locations = scene.locations(places);
    if (origin.isEmpty() || !scene.traits().language().readsLinks()) {
      return Either.forLeft(locations);
    }
    Range from = scene.positions().range(scene.source(), origin.get());
    return Either.forRight(locations.stream()
        .map(to -> new LocationLink(to.getUri(), to.getRange(), to.getRange(), from))
        .toList());
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
        .map(found -> new DocumentHighlight(
            scene.positions().range(scene.source(), found.span()),
            found.gives() ? DocumentHighlightKind.Write : DocumentHighlightKind.Read))
        .toList();
  }
}
